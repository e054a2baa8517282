package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Item;
import perkilo.costing.Listing;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.StockLot;
import perkilo.names.Names;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.purchasing.Need;
import perkilo.units.Measure;

/**
 * A lot on the shelf or on order, in the item's base unit.
 *
 * @param lot its row
 * @param quantity in kilograms or pieces
 * @param from the day from which it is there: the costing date if it is on the shelf or overdue
 * @param lastDay the last day it may be used: as typed; else, for goods on order, the end of the material's shelf life
 *     from their arrival; null if unknown
 */
public record StockOnHand(
        StockLot lot,
        BigDecimal quantity,
        LocalDate from,
        @Nullable LocalDate lastDay) {

    /** What is used first: what expires first, then stock before goods on order, then what is there first. */
    static final Comparator<StockOnHand> ORDER_OF_USE = Comparator.comparing(
                    (StockOnHand stock) -> stock.lastDay(), Comparator.nullsLast(Comparator.<LocalDate>naturalOrder()))
            .thenComparing(stock -> stock.lot().isOnOrder())
            .thenComparing(StockOnHand::from);

    /** The lots of an item, those that are used first at the front, then in the order of the sheet. */
    static List<StockOnHand> of(Book book, Item item) {
        String key = Names.key(item.name());
        return book.stock().stream()
                .filter(lot -> Names.key(lot.item()).equals(key))
                .filter(lot -> perUnit(lot, item).isPresent())
                .map(lot -> of(lot, book.settings().costingDate(), item))
                .sorted(ORDER_OF_USE)
                .toList();
    }

    private static StockOnHand of(StockLot lot, LocalDate today, Item item) {
        BigDecimal quantity = lot.quantity().value().multiply(perUnit(lot, item).orElseThrow());
        Day expected = lot.expected();
        LocalDate from = expected == null || expected.date().isBefore(today) ? today : expected.date();
        return new StockOnHand(lot, quantity, from, lastDay(lot, from, item));
    }

    private static @Nullable LocalDate lastDay(StockLot lot, LocalDate from, Item item) {
        Day expires = lot.expires();
        if (expires != null) {
            return expires.date();
        }
        ShelfLife life = ShelfLife.of(item);
        return lot.expected() == null || life == null ? null : life.lastDay(from);
    }

    /** Whether it can be used on a day. */
    boolean isGoodOn(LocalDate day) {
        return !from.isAfter(day) && (lastDay == null || !lastDay.isBefore(day));
    }

    /** An error for each lot whose unit does not fit its item. */
    static List<Finding> problems(Book book, Item item) {
        String key = Names.key(item.name());
        return book.stock().stream()
                .filter(lot -> Names.key(lot.item()).equals(key))
                .filter(lot -> perUnit(lot, item).isEmpty())
                .map(lot -> Finding.error(lot.origin(), misfit(lot, item)))
                .toList();
    }

    /** The lot for the planner. */
    Need.Lot asLot(Horizon horizon) {
        int arrival = horizon.periodFrom(from);
        int last = horizon.lastUse(lastDay);
        int usable = last == Need.UNLIMITED ? last : Math.max(0, last - arrival + 1);
        int early = arrival < horizon.periods() ? Horizon.daysBetween(from, horizon.day(arrival)) : 0;
        return new Need.Lot(quantity, arrival, usable, early);
    }

    /** The material's density; null for a component, or if unknown. */
    public static @Nullable Figure density(Item item) {
        Material material = item.material();
        return material == null ? null : material.density();
    }

    private static Optional<BigDecimal> perUnit(StockLot lot, Item item) {
        boolean counted = lot.unit().isCount();
        boolean needsDensity = lot.unit().kind() == Measure.Kind.VOLUME;
        if (counted == item.isMaterial() || (needsDensity && density(item) == null)) {
            return Optional.empty();
        }
        return Optional.of(Listing.basePer(lot.unit(), density(item)));
    }

    private static String misfit(StockLot lot, Item item) {
        return lot.unit().kind() == Measure.Kind.VOLUME && item.isMaterial()
                ? OrderMessages.stockNeedsDensity(item.name(), lot.unit().symbol())
                : OrderMessages.stockInOtherUnit(item.name(), lot.unit().symbol(), item.isMaterial() ? "kg" : "pieces");
    }
}
