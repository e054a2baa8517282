package perkilo.orderplan;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.offers.OrderDays;
import perkilo.offers.PackOffered;
import perkilo.origin.Figure;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Vendor;

/**
 * The purchase problem of a horizon: what must be bought, and who sells it.
 *
 * @param horizon the days
 * @param runs in the order of the demand
 * @param items that must be bought, in the order of the problem's needs
 * @param listings the offers of the problem's quotes, by quote index; an offer that counts again later has several
 * @param days the days on which orders can be placed at each quote, by quote index
 * @param slots the days on which orders are placed, by the problem's vendor index
 * @param problem for the planner
 */
public record HorizonProblem(
        Horizon horizon,
        List<PlannedRun> runs,
        List<HorizonItem> items,
        List<Listing> listings,
        List<OrderDays> days,
        List<OrderSlots> slots,
        PurchaseProblem problem) {

    private static final BigDecimal DAYS_A_YEAR = BigDecimal.valueOf(365);

    public HorizonProblem {
        runs = List.copyOf(runs);
        items = List.copyOf(items);
        listings = List.copyOf(listings);
        days = List.copyOf(days);
        slots = List.copyOf(slots);
    }

    /**
     * The problem of some needs.
     *
     * @param runs in the order of the demand
     * @param items what they need
     */
    static HorizonProblem of(
            Market market, Horizon horizon, WorkDays workDays, List<PlannedRun> runs, List<HorizonItem> items) {
        List<OrderSlots> slots = OrderSlots.of(market, horizon, workDays, prices(market, items));
        OrderQuotes quotes = new OrderQuotes(market, horizon, slots);
        List<Need> needs = new ArrayList<>();
        for (int index = 0; index < items.size(); index++) {
            needs.add(need(market, horizon, items.get(index)));
            quotes.add(index, items.get(index));
        }
        Settings settings = market.book().settings();
        List<Vendor> vendors = slots.stream()
                .map(slot -> market.vendors().get(slot.supplier()))
                .toList();
        PurchaseProblem problem = new PurchaseProblem(
                horizon.periods(),
                needs,
                vendors,
                quotes.quotes(),
                orNone(settings.cashPerMonth()),
                orNone(settings.cashTotal()),
                settings.ordering().costPerOrder().value(),
                settings.cashPerMonth() == null ? null : PaymentMonths.of(market, horizon, slots));
        return new HorizonProblem(horizon, runs, items, quotes.listings(), quotes.days(), slots, problem);
    }

    /** By supplier: the days of their prices for some items. */
    private static List<List<OrderDays>> prices(Market market, List<HorizonItem> items) {
        List<List<OrderDays>> prices = new ArrayList<>();
        market.suppliers().forEach(supplier -> prices.add(new ArrayList<>()));
        for (HorizonItem item : items) {
            for (Listing listing : market.listings(item.name())) {
                prices.get(listing.vendor()).addAll(market.prices().orderDays(listing.offer()));
            }
        }
        return prices;
    }

    /** The day of the order for a line. */
    public LocalDate orderDay(PurchasePlan.Line line) {
        return orderDay(problem.quotes().get(line.quote()).vendor(), line.period());
    }

    /** The day of the order from a vendor for a period. */
    LocalDate orderDay(int vendor, int period) {
        return requireNonNull(slots.get(vendor).days().get(period), "a plan orders on days that there are");
    }

    /** The day on which the goods of a line arrive. */
    public LocalDate arrival(PurchasePlan.Line line) {
        OrderSlots slot = slots.get(problem.quotes().get(line.quote()).vendor());
        return requireNonNull(slot.arrival(line.period()), "a plan orders on days that there are");
    }

    /** The supplier that a vendor of the problem stands for, as an index into the market's. */
    int supplierOf(int vendor) {
        return slots.get(vendor).supplier();
    }

    /** The same problem without limits on what orders may cost. */
    HorizonProblem withoutCashLimits() {
        return new HorizonProblem(horizon, runs, items, listings, days, slots, problem.withCash(null, null));
    }

    /**
     * The quote for buying packs in another order: of the quotes for the same pack that are valid then, the cheapest
     * for this quantity, and of equal ones the same quote; empty if none is valid.
     *
     * @param vendor of the other order
     */
    Optional<Integer> quoteFor(int quote, int vendor, int period, long packs) {
        PackOffered pack = PackOffered.of(listings.get(quote).offer());
        return IntStream.concat(IntStream.of(quote), IntStream.range(0, listings.size()))
                .filter(other -> problem.quotes().get(other).isFor(period)
                        && problem.quotes().get(other).vendor() == vendor)
                .filter(other -> other == quote
                        || PackOffered.of(listings.get(other).offer()).equals(pack))
                .boxed()
                .min(Comparator.comparing(
                        other -> goods(problem.quotes().get(other), packs),
                        Comparator.nullsLast(Comparator.naturalOrder())));
    }

    /** The cost of packs, in the vendor's currency; null if the quantity is too small. */
    private static @Nullable BigDecimal goods(Quote quote, long packs) {
        return quote.quantity(packs).compareTo(quote.smallestLine()) < 0
                ? null
                : quote.goods(packs).multiply(quote.toVendorCurrency());
    }

    /** The packs of an item that a plan buys, in all. */
    List<Reasons.Packs> packsOf(int item, PurchasePlan plan) {
        List<Reasons.Packs> all = new ArrayList<>();
        for (PurchasePlan.Line line : plan.lines()) {
            if (problem.quotes().get(line.quote()).item() == item) {
                Reasons.Packs more =
                        new Reasons.Packs(listings.get(line.quote()), line.packs(), announcedFor(line.quote()));
                int same = IntStream.range(0, all.size())
                        .filter(index -> all.get(index).isOfPriceOf(more))
                        .findFirst()
                        .orElse(-1);
                if (same < 0) {
                    all.add(more);
                } else {
                    all.set(same, all.get(same).and(more));
                }
            }
        }
        all.sort(Comparator.comparing(packs -> listings.indexOf(packs.listing())));
        return all;
    }

    /** The day from which a later price counts; null for a price that counts on the costing date. */
    private @Nullable LocalDate announcedFor(int quote) {
        LocalDate first = days.get(quote).first();
        return first.isAfter(horizon.today()) ? first : null;
    }

    /** Days from order to arrival; part of a day counts as one; zero if unknown. */
    public static int leadDays(Supplier supplier) {
        Figure days = supplier.leadTimeDays();
        return days == null ? 0 : days.value().setScale(0, RoundingMode.CEILING).intValueExact();
    }

    /**
     * Holding is {@code Holding % per year / 365 × lowest listed goods price} for one unit and day; the credit is
     * {@code Leftover credit % × lowest listed goods price}.
     */
    private static Need need(Market market, Horizon horizon, HorizonItem item) {
        Settings settings = market.book().settings();
        BigDecimal price = market.lowestPrice(item.name()).orElse(BigDecimal.ZERO);
        return item.asNeed(
                horizon,
                settings.holdingPerYear().value().multiply(price).divide(DAYS_A_YEAR, MathContext.DECIMAL128),
                settings.leftoverCredit().value().multiply(price),
                creditable(market, horizon, item));
    }

    /**
     * The most of a leftover that can be used before it expires, if the need goes on as in the horizon: the need of an
     * average month, times the months of shelf life less one; without a shelf life, the whole leftover.
     */
    private static BigDecimal creditable(Market market, Horizon horizon, HorizonItem item) {
        ShelfLife life = item.life();
        if (life == null) {
            return market.mostThatIsBought(item.name(), item.total())
                    .add(item.safety().quantity());
        }
        return item.total()
                .multiply(BigDecimal.valueOf(Math.max(0, life.months() - 1L)))
                .divide(BigDecimal.valueOf(horizon.months()), MathContext.DECIMAL128);
    }

    private static @Nullable BigDecimal orNone(@Nullable Figure limit) {
        return limit == null ? null : limit.value();
    }
}
