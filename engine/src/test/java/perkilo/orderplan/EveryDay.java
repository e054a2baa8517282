package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.StockLot;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Day;
import perkilo.origin.Figure;

/**
 * The cheapest plan of a small book by trying everything: any number of packs of any offer ordered on any working day.
 * Written from the definition alone, day by day; it knows euros, kilograms, units of one kilogram without losses, and
 * no more than a few packs in all.
 */
final class EveryDay {

    private final Book book;
    private final LocalDate today;
    private final LocalDate end;
    private final int days;
    private final int mostPacks;
    private final List<String> items;
    private final double[][] needs;
    private final double[] holding;
    private final double[] safety;
    private final int[] safetyFrom;
    private final List<List<Lot>> stock = new ArrayList<>();
    private final List<Choice> choices = new ArrayList<>();
    private double best = Double.POSITIVE_INFINITY;
    private int[] bestPacks = {};

    /** A lot: its amount, the day it is there, and its last day. */
    private record Lot(double quantity, int from, int last, int rank) {}

    /** An offer on a day of order. */
    private record Choice(Offer offer, Supplier supplier, int item, int ordered, int arrival, int last) {}

    /**
     * The problem of a book whose needs can all be met in time.
     *
     * @param mostPacks in all
     */
    EveryDay(Book book, int mostPacks) {
        this.book = book;
        this.mostPacks = mostPacks;
        today = book.settings().costingDate();
        end = book.demand().stream()
                .map(this::goodsNeeded)
                .max(LocalDate::compareTo)
                .orElseThrow();
        days = at(end) + 1;
        items = book.materials().values().stream().map(Material::name).toList();
        needs = new double[items.size()][days];
        holding = new double[items.size()];
        safety = new double[items.size()];
        safetyFrom = new int[items.size()];
        for (int i = 0; i < items.size(); i++) {
            readNeeds(i);
            readStock(i);
            readOffers(i);
        }
    }

    private int at(LocalDate day) {
        return (int) ChronoUnit.DAYS.between(today, day);
    }

    private LocalDate goodsNeeded(Demand demand) {
        Figure own = book.product(demand.product()).orElseThrow().leadDays();
        Figure all = book.settings().ordering().makingLeadDays();
        Figure lead = own == null ? all : own;
        return demand.neededBy()
                .date()
                .minusDays(lead == null ? 0 : lead.value().intValueExact());
    }

    private void readNeeds(int item) {
        for (Demand demand : book.demand()) {
            String formula = book.product(demand.product()).orElseThrow().formula();
            for (Formula.Line line : book.formula(formula).orElseThrow().lines()) {
                Figure level = line.level();
                if (line.material().equals(items.get(item)) && level != null) {
                    double units = demand.units().value().doubleValue();
                    needs[item][at(goodsNeeded(demand))] +=
                            units * level.value().doubleValue();
                }
            }
        }
    }

    private void readStock(int item) {
        List<Lot> lots = new ArrayList<>();
        for (StockLot lot : book.stock()) {
            if (lot.item().equals(items.get(item))) {
                Day expected = lot.expected();
                Day expires = lot.expires();
                LocalDate from = expected == null || expected.date().isBefore(today) ? today : expected.date();
                int last = expires != null
                        ? at(expires.date())
                        : expected == null ? Integer.MAX_VALUE : lastDay(item, from);
                lots.add(new Lot(lot.quantity().value().doubleValue(), at(from), last, expected == null ? 0 : 1));
            }
        }
        stock.add(lots);
    }

    private int lastDay(int item, LocalDate arrival) {
        Figure life = book.material(items.get(item)).orElseThrow().shelfLifeMonths();
        if (life == null) {
            return Integer.MAX_VALUE;
        }
        int months = life.value().intValue();
        int part = life.value()
                .subtract(BigDecimal.valueOf(months))
                .multiply(BigDecimal.valueOf(30))
                .intValue();
        return at(arrival.plusMonths(months).plusDays(part - 1L));
    }

    private boolean isWorkDay(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY
                && day.getDayOfWeek() != DayOfWeek.SUNDAY
                && book.daysOff().stream().noneMatch(off -> off.day().date().equals(day));
    }

    /** The offer whose price counts on a day: of one pack, the newest quote. */
    private boolean counts(Offer offer, LocalDate day) {
        for (Offer other : book.offers()) {
            boolean samePack = other.supplier().equals(offer.supplier())
                    && other.item().equals(offer.item())
                    && other.packSize().value().compareTo(offer.packSize().value()) == 0;
            if (samePack
                    && quoted(other).isAfter(quoted(offer))
                    && !quoted(other).isAfter(day)) {
                return false;
            }
        }
        return !quoted(offer).isAfter(day);
    }

    private static LocalDate quoted(Offer offer) {
        LocalDate day = offer.validity().quotedOn();
        return day == null ? LocalDate.MIN : day;
    }

    private void readOffers(int item) {
        double lowest = Double.POSITIVE_INFINITY;
        int first = Integer.MAX_VALUE;
        for (Offer offer : book.offers()) {
            if (!offer.item().equals(items.get(item))) {
                continue;
            }
            Supplier supplier = book.supplier(offer.supplier()).orElseThrow();
            if (counts(offer, today)) {
                for (Offer.PriceBreak one : offer.breaks()) {
                    lowest = Math.min(
                            lowest,
                            one.price().value().doubleValue()
                                    / offer.packSize().value().doubleValue());
                }
            }
            Figure leadDays = supplier.leadTimeDays();
            int lead = leadDays == null ? 0 : leadDays.value().intValueExact();
            for (int day = 0; day + lead < days; day++) {
                LocalDate ordered = today.plusDays(day);
                if (isWorkDay(ordered) && counts(offer, ordered)) {
                    int arrival = day + lead;
                    first = Math.min(first, arrival);
                    choices.add(
                            new Choice(offer, supplier, item, day, arrival, lastDay(item, today.plusDays(arrival))));
                }
            }
        }
        holding[item] = lowest * book.settings().holdingPerYear().value().doubleValue() / 365;
        Figure stated = book.material(items.get(item)).orElseThrow().safetyStock();
        safety[item] = stated == null ? 0 : stated.value().doubleValue();
        safetyFrom[item] = first;
    }

    /** The least cost: what is paid, holding, and the cost of orders. Infinite if nothing is possible. */
    double least() {
        tryFrom(0, mostPacks, new int[choices.size()]);
        return best;
    }

    /** The cheapest plan in words, for a person who looks for a fault. */
    String plan() {
        List<String> lines = new ArrayList<>();
        for (int c = 0; c < bestPacks.length; c++) {
            Choice choice = choices.get(c);
            if (bestPacks[c] > 0) {
                lines.add("%s × %s of %s from %s on %s"
                        .formatted(
                                bestPacks[c],
                                choice.offer().packSize().value(),
                                choice.offer().item(),
                                choice.supplier().name(),
                                today.plusDays(choice.ordered())));
            }
        }
        return lines.toString();
    }

    private void tryFrom(int choice, int left, int[] packs) {
        if (choice == choices.size()) {
            consider(packs);
            return;
        }
        for (int n = 0; n <= left; n++) {
            packs[choice] = n;
            tryFrom(choice + 1, left - n, packs);
        }
        packs[choice] = 0;
    }

    private void consider(int[] packs) {
        double paid = paid(packs);
        if (paid >= best) {
            return;
        }
        double cost = paid;
        for (int item = 0; item < items.size(); item++) {
            cost += kept(item, packs);
        }
        if (cost < best) {
            best = cost;
            bestPacks = packs.clone();
        }
    }

    /** What all orders cost; infinite if a minimum is not kept. */
    private double paid(int[] packs) {
        Map<String, double[]> goodsOf = new TreeMap<>();
        Map<String, Supplier> suppliers = new TreeMap<>();
        for (int c = 0; c < packs.length; c++) {
            if (packs[c] > 0) {
                Choice choice = choices.get(c);
                double goods = goods(choice.offer(), packs[c]);
                if (goods < 0) {
                    return Double.POSITIVE_INFINITY;
                }
                String order = choice.supplier().name() + choice.ordered();
                goodsOf.computeIfAbsent(order, key -> new double[1])[0] += goods;
                suppliers.put(order, choice.supplier());
            }
        }
        double paid = 0;
        for (Map.Entry<String, double[]> order : goodsOf.entrySet()) {
            Supplier supplier = Objects.requireNonNull(suppliers.get(order.getKey()));
            Figure minimum = supplier.minimumOrderValue();
            Figure charge = supplier.smallOrderCharge();
            boolean small =
                    minimum != null && order.getValue()[0] < minimum.value().doubleValue() - 1e-9;
            if (small && charge == null) {
                return Double.POSITIVE_INFINITY;
            }
            paid += order.getValue()[0]
                    + supplier.freightPerOrder().value().doubleValue()
                    + (small && charge != null ? charge.value().doubleValue() : 0)
                    + book.settings().ordering().costPerOrder().value().doubleValue();
        }
        return paid;
    }

    /** The goods value of packs; below zero if they are too few or no multiple. */
    private static double goods(Offer offer, int packs) {
        double quantity = packs * offer.packSize().value().doubleValue();
        Figure minimum = offer.minimumOrder();
        if (packs % offer.orderMultiple().value().intValue() != 0
                || (minimum != null && quantity < minimum.value().doubleValue())) {
            return -1;
        }
        double price = -1;
        for (Offer.PriceBreak one : offer.breaks()) {
            price = one.fromQuantity().doubleValue() <= quantity + 1e-9
                    ? one.price().value().doubleValue()
                    : price;
        }
        return price < 0 ? -1 : price * packs;
    }

    /** The holding cost of an item; infinite if a need is not covered, or the safety stock is not there. */
    private double kept(int item, int[] packs) {
        List<Lot> lots = new ArrayList<>(stock.get(item));
        for (int c = 0; c < packs.length; c++) {
            Choice choice = choices.get(c);
            if (packs[c] > 0 && choice.item() == item) {
                double kg = packs[c] * choice.offer().packSize().value().doubleValue();
                lots.add(new Lot(kg, choice.arrival(), choice.last(), 2));
            }
        }
        lots.sort(Comparator.comparingInt(Lot::last).thenComparingInt(Lot::rank));
        double[] left = lots.stream().mapToDouble(Lot::quantity).toArray();
        double kept = 0;
        for (int day = 0; day < days; day++) {
            double missing = needs[item][day];
            double usable = 0;
            double there = 0;
            for (int l = 0; l < left.length; l++) {
                Lot lot = lots.get(l);
                if (lot.from() <= day) {
                    double taken = lot.last() >= day ? Math.min(left[l], missing) : 0;
                    left[l] -= taken;
                    missing -= taken;
                    usable += lot.last() >= day ? left[l] : 0;
                    there += left[l];
                }
            }
            if (missing > 1e-9 || (day >= safetyFrom[item] && usable < safety[item] - 1e-9)) {
                return Double.POSITIVE_INFINITY;
            }
            kept += day < days - 1 ? there : 0;
        }
        return kept * holding[item];
    }
}
