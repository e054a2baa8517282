package perkilo.orderplan;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;
import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.StockLot;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Day;
import perkilo.origin.Figure;

/** The arithmetic of a plan done again, plainly, by days and from the book alone. */
final class OnPaper {

    private static final LocalDate DISTANT_PAST = LocalDate.of(1, 1, 1);

    private final Book book;
    private final Unmet unmet;

    /**
     * Paper for a plan.
     *
     * @param unmet what the plan says it meets later or not at all
     */
    OnPaper(Book book, Unmet unmet) {
        this.book = book;
        this.unmet = unmet;
    }

    /** What is needed of an item on a day; units are of one kilogram, and nothing is lost but in handling. */
    BigDecimal needed(String item, LocalDate day) {
        BigDecimal needed = ZERO;
        for (Demand demand : book.demand()) {
            if (plannedFor(item, demand.neededBy().date()).equals(day)) {
                needed = needed.add(needed(item, demand));
            }
        }
        for (NotCovered need : unmet.notCovered()) {
            LocalDate by = need.neededBy();
            BigDecimal quantity = need.quantity();
            boolean here = need.item().equals(item)
                    && by != null
                    && quantity != null
                    && plannedFor(item, by).equals(day);
            needed = here ? needed.subtract(quantity) : needed;
        }
        return needed;
    }

    /** The day itself, or the later one for which the plan says that a late need is planned. */
    private LocalDate plannedFor(String item, LocalDate day) {
        return unmet.late().stream()
                .filter(late -> late.item().equals(item) && late.neededBy().equals(day))
                .map(LateNeed::possibleOn)
                .findFirst()
                .orElse(day);
    }

    private BigDecimal needed(String item, Demand demand) {
        Product product = book.product(demand.product()).orElseThrow();
        BigDecimal units = demand.units().value();
        BigDecimal needed = ZERO;
        for (Formula.Line line : book.formula(product.formula()).orElseThrow().lines()) {
            if (line.material().equals(item)) {
                BigDecimal loss = book.material(item)
                        .map(Material::handlingLoss)
                        .map(Figure::value)
                        .orElse(ZERO);
                Figure level = line.level();
                needed = needed.add(units.multiply(level == null ? ZERO : level.value())
                        .divide(ONE.subtract(loss), MathContext.DECIMAL128));
            }
        }
        for (Product.Component component : product.components()) {
            if (component.name().equals(item)) {
                needed = needed.add(units.multiply(component.perUnit().value())
                        .divide(ONE.subtract(component.loss().value()), 0, RoundingMode.CEILING));
            }
        }
        return needed;
    }

    /** What is left at the end by last day, and what could not be covered, when lots are used up day by day. */
    record Shelf(Map<LocalDate, BigDecimal> left, BigDecimal missing) {}

    /** A lot that is there from one day and may be used until another. */
    record Lot(BigDecimal quantity, LocalDate from, LocalDate lastDay, boolean bought) {}

    Shelf shelf(String item, List<LocalDate> days, List<Lot> bought) {
        List<Lot> lots = new ArrayList<>(bought);
        for (StockLot lot : book.stock()) {
            if (lot.item().equals(item)) {
                BigDecimal kg = lot.quantity().value().multiply(lot.unit().inBase());
                lots.add(new Lot(kg, from(lot), lastDay(lot), false));
            }
        }
        lots.sort(Comparator.comparing(Lot::lastDay).thenComparing(Lot::bought).thenComparing(Lot::from));
        BigDecimal missing = ZERO;
        for (LocalDate day : days) {
            BigDecimal wanted = needed(item, day);
            for (int i = 0; i < lots.size(); i++) {
                Lot lot = lots.get(i);
                boolean fits = !lot.from().isAfter(day) && !lot.lastDay().isBefore(day);
                BigDecimal taken = fits ? wanted.min(lot.quantity()) : ZERO;
                wanted = wanted.subtract(taken);
                lots.set(i, new Lot(lot.quantity().subtract(taken), lot.from(), lot.lastDay(), lot.bought()));
            }
            missing = missing.add(wanted);
        }
        Map<LocalDate, BigDecimal> left = new TreeMap<>();
        lots.stream()
                .filter(lot -> lot.quantity().signum() > 0)
                .forEach(lot -> left.merge(lot.lastDay(), lot.quantity(), BigDecimal::add));
        return new Shelf(left, missing);
    }

    /** Goods that should be there by the costing date count as there. */
    private LocalDate from(StockLot lot) {
        Day expected = lot.expected();
        boolean there =
                expected == null || !expected.date().isAfter(book.settings().costingDate());
        return expected == null || there ? DISTANT_PAST : expected.date();
    }

    /** As typed; goods on order else keep for the shelf life from the day they come, the rest for ever. */
    private LocalDate lastDay(StockLot lot) {
        Day expires = lot.expires();
        if (expires != null) {
            return expires.date();
        }
        Figure months = book.material(lot.item()).map(Material::shelfLifeMonths).orElse(null);
        Day expected = lot.expected();
        if (expected == null || months == null) {
            return LocalDate.MAX;
        }
        LocalDate today = book.settings().costingDate();
        LocalDate comes = expected.date().isBefore(today) ? today : expected.date();
        return comes.plusMonths(months.value().longValueExact()).minusDays(1);
    }

    /**
     * An order's landed cost: {@code [ (G + S + I + F) (1 + margin) + duty ] × rate}. Each line pays its own duty on
     * its goods, insurance and freight, and on its share by goods of what is paid once.
     */
    BigDecimal landed(SupplierOrder order, BigDecimal rate) {
        Supplier supplier = order.supplier();
        List<BigDecimal> goods = new ArrayList<>();
        BigDecimal freight = ZERO;
        BigDecimal duty = ZERO;
        for (int i = 0; i < order.listings().size(); i++) {
            Offer offer = order.listings().get(i).offer();
            long packs = order.cost().lines().get(i).line().packs();
            BigDecimal quantity = offer.packSize().value().multiply(BigDecimal.valueOf(packs));
            BigDecimal line =
                    priceAt(offer, quantity).multiply(BigDecimal.valueOf(packs)).setScale(2, RoundingMode.HALF_UP);
            BigDecimal byWeight = supplier.freightPerKg().value().multiply(weight(offer, quantity));
            goods.add(line);
            freight = freight.add(byWeight);
            BigDecimal insured = line.multiply(ONE.add(supplier.insurance().value()));
            duty = duty.add(dutyOf(offer, supplier).multiply(insured.add(byWeight)));
        }
        BigDecimal all = goods.stream().reduce(ZERO, BigDecimal::add);
        Figure minimum = supplier.minimumOrderValue();
        Figure charge = supplier.smallOrderCharge();
        BigDecimal small =
                minimum != null && charge != null && all.compareTo(minimum.value()) < 0 ? charge.value() : ZERO;
        BigDecimal once = supplier.freightPerOrder().value().add(small);
        for (int i = 0; i < goods.size(); i++) {
            BigDecimal rateOfLine = dutyOf(order.listings().get(i).offer(), supplier);
            duty = duty.add(rateOfLine.multiply(once).multiply(goods.get(i)).divide(all, MathContext.DECIMAL128));
        }
        boolean foreign = !supplier.currency().equals(book.settings().home());
        BigDecimal margin = foreign ? book.settings().conversionMargin().value() : ZERO;
        return all.multiply(ONE.add(supplier.insurance().value()))
                .add(once)
                .add(freight)
                .multiply(ONE.add(margin))
                .add(duty)
                .multiply(rate);
    }

    private static BigDecimal dutyOf(Offer offer, Supplier supplier) {
        Figure own = offer.duty();
        return own == null ? supplier.duty().value() : own.value();
    }

    private static BigDecimal priceAt(Offer offer, BigDecimal quantity) {
        BigDecimal price = null;
        for (Offer.PriceBreak one : offer.breaks()) {
            if (one.fromQuantity().compareTo(quantity) <= 0) {
                price = one.price().value();
            }
        }
        return requireNonNull(price);
    }

    private BigDecimal grams(String component) {
        for (Product product : book.products().values()) {
            for (Product.Component one : product.components()) {
                Figure weight = one.weight();
                if (weight != null && one.name().equals(component)) {
                    return weight.value();
                }
            }
        }
        return ZERO;
    }

    private BigDecimal weight(Offer offer, BigDecimal quantity) {
        return switch (offer.packUnit()) {
            case KG -> quantity;
            case L -> quantity.multiply(new BigDecimal("0.9"));
            case EACH -> quantity.multiply(grams(offer.item())).movePointLeft(3);
            default -> throw new AssertionError(offer.packUnit());
        };
    }
}
