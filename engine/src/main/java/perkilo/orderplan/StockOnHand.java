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
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.purchasing.Need;
import perkilo.units.Measure;

/**
 * A lot on the shelf or on order, in the item's base unit.
 *
 * @param lot its row
 * @param quantity in kilograms or pieces
 * @param arrival the first month in which it is there: the first of all if on the shelf or overdue; may be after the
 *     last
 * @param lastDay the last day it may be used: as typed; else, for goods on order, the end of the material's shelf life
 *     from their arrival; null if unknown
 * @param usablePeriods the number of months, from its arrival on, in which it may be used: those that end on or before
 *     its last day; {@link Need#UNLIMITED} if no last day is known
 */
public record StockOnHand(
        StockLot lot,
        BigDecimal quantity,
        int arrival,
        @Nullable LocalDate lastDay,
        int usablePeriods) {

    /** The lots of an item, those that expire first at the front, then in the order of the sheet. */
    static List<StockOnHand> of(Book book, Horizon horizon, Item item) {
        String key = Names.key(item.name());
        return book.stock().stream()
                .filter(lot -> Names.key(lot.item()).equals(key))
                .filter(lot -> perUnit(lot, item).isPresent())
                .map(lot -> of(lot, horizon, item))
                .sorted(Comparator.comparing(StockOnHand::lastDay, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
    }

    private static StockOnHand of(StockLot lot, Horizon horizon, Item item) {
        BigDecimal quantity = lot.quantity().value().multiply(perUnit(lot, item).orElseThrow());
        int arrival =
                lot.expected() == null ? 0 : horizon.arrival(lot.expected().date());
        LocalDate last = lastDay(lot, horizon, item);
        int usable = last == null ? Need.UNLIMITED : Math.max(0, horizon.usablePeriods(last) - arrival);
        return new StockOnHand(lot, quantity, arrival, last, usable);
    }

    private static @Nullable LocalDate lastDay(StockLot lot, Horizon horizon, Item item) {
        if (lot.expires() != null) {
            return lot.expires().date();
        }
        int months = HorizonItem.usablePeriods(item);
        if (lot.expected() == null || months == Need.UNLIMITED) {
            return null;
        }
        LocalDate expected = lot.expected().date();
        LocalDate arrives = horizon.isOverdue(expected) ? horizon.today() : expected;
        return arrives.plusMonths(months).minusDays(1);
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
    Need.Lot asLot() {
        return new Need.Lot(quantity, arrival, usablePeriods);
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
