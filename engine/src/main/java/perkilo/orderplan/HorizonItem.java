package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Item;
import perkilo.model.Book;
import perkilo.origin.Figure;
import perkilo.purchasing.Need;

/**
 * An item over the horizon. Quantities are in kilograms or pieces.
 *
 * @param item as in the first run that needs it
 * @param uses the runs that need it, in the order of the demand
 * @param needed by period, as many as the horizon has
 * @param stock on the shelf and on order, what expires first at the front
 * @param life how long a purchase can be used; null if no shelf life is known
 * @param safety what has to be there at all times
 */
public record HorizonItem(
        Item item,
        List<Use> uses,
        List<BigDecimal> needed,
        List<StockOnHand> stock,
        @Nullable ShelfLife life,
        Need.Safety safety) {

    public HorizonItem {
        uses = List.copyOf(uses);
        needed = List.copyOf(needed);
        stock = List.copyOf(stock);
    }

    /**
     * One run's need of the item.
     *
     * @param run the run
     * @param item its quantity, and its lines in the formula
     * @param day that it is planned for
     * @param notCovered the part of the quantity that is not planned
     */
    public record Use(PlannedRun run, Item item, LocalDate day, BigDecimal notCovered) {

        /** What is planned of it. */
        public BigDecimal quantity() {
            return item.needed().subtract(notCovered);
        }
    }

    static HorizonItem of(Horizon horizon, Wanted wanted, Need.Safety safety) {
        BigDecimal[] needed = new BigDecimal[horizon.periods()];
        Arrays.fill(needed, BigDecimal.ZERO);
        for (Use use : wanted.uses()) {
            if (use.quantity().signum() > 0) {
                int period = horizon.periodFrom(use.day());
                needed[period] = needed[period].add(use.quantity());
            }
        }
        return new HorizonItem(
                wanted.item(), wanted.uses(), List.of(needed), wanted.stock(), ShelfLife.of(wanted.item()), safety);
    }

    /** The item's name. */
    public String name() {
        return item.name();
    }

    /** What a book says of its safety stock; null for nothing. */
    public @Nullable Figure statedSafety(Book book) {
        return SafetyStock.stated(book, item);
    }

    /** The need of all days together. */
    public BigDecimal total() {
        return needed.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The last day on which goods may be used that arrive on a day; null if no shelf life is known. */
    public @Nullable LocalDate lastDay(LocalDate arrival) {
        return life == null ? null : life.lastDay(arrival);
    }

    /** The item as a need for the planner. */
    Need asNeed(Horizon horizon, BigDecimal holdingPerDay, BigDecimal creditPerUnit, BigDecimal creditable) {
        return new Need(
                name(),
                needed,
                stock.stream().map(lot -> lot.asLot(horizon)).toList(),
                Need.UNLIMITED,
                holdingPerDay,
                creditPerUnit,
                creditable,
                horizon.lengths(),
                safety);
    }
}
