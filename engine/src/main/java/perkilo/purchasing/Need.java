package perkilo.purchasing;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.List;

/**
 * The need of one item by period, and the stock that is there already.
 *
 * @param item the item's name
 * @param perPeriod the use in each period, in the base unit; as many as the problem has periods
 * @param stock on the shelf at the start, and on order already
 * @param usablePeriods how many periods a purchase may be used in, counting the period it arrives in; at least one, and
 *     {@link #UNLIMITED} if no shelf life is known
 * @param holdingPerUnit cost of one unit in stock at the end of a period, in home currency
 * @param creditPerUnit value of one unit left over at the end, in home currency; zero if leftovers have no value
 * @param creditable the largest leftover that gets the credit, because it can still be used; in the base unit
 */
public record Need(
        String item,
        List<BigDecimal> perPeriod,
        List<Lot> stock,
        int usablePeriods,
        BigDecimal holdingPerUnit,
        BigDecimal creditPerUnit,
        BigDecimal creditable) {

    /** For an item without a known shelf life. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    public Need {
        requireNonNull(item, "item");
        perPeriod = List.copyOf(perPeriod);
        stock = List.copyOf(stock);
        if (usablePeriods < 1) {
            throw new IllegalArgumentException("usablePeriods must be at least 1, but was " + usablePeriods);
        }
        for (int period = 0; period < perPeriod.size(); period++) {
            if (perPeriod.get(period).signum() < 0) {
                throw new IllegalArgumentException("a need must be zero or more, but was one of " + perPeriod);
            }
        }
        if (holdingPerUnit.signum() < 0 || creditPerUnit.signum() < 0 || creditable.signum() < 0) {
            throw new IllegalArgumentException("holding, credit and creditable must be zero or more");
        }
    }

    /**
     * The last period in which goods can be used, without overflow.
     *
     * @param arrival the first period
     * @param usablePeriods how many, counting the first
     * @return {@link #UNLIMITED} if no shelf life is known
     */
    public static int lastPeriod(int arrival, int usablePeriods) {
        return usablePeriods == UNLIMITED
                ? UNLIMITED
                : (int) Math.min((long) arrival + usablePeriods - 1, UNLIMITED - 1L);
    }

    /** A need in a single period, without stock and without value of leftovers. */
    public static Need once(String item, BigDecimal quantity) {
        return new Need(
                item, List.of(quantity), List.of(), UNLIMITED, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);
    }

    /** The need of all periods together. */
    public BigDecimal total() {
        return perPeriod.size() == 1 ? perPeriod.get(0) : perPeriod.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * The need that the stock does not cover, if what expires first is used first.
     *
     * @return the missing quantity of each period, in the base unit; as many as periods
     */
    public List<BigDecimal> net() {
        return Shelf.of(this).uncovered();
    }

    /** The holding cost of a shelf, in home currency. */
    BigDecimal holding(Shelf shelf) {
        return shelf.closing().stream().reduce(BigDecimal.ZERO, BigDecimal::add).multiply(holdingPerUnit);
    }

    /** The value of what is left on a shelf, in home currency. */
    BigDecimal credit(Shelf shelf) {
        return shelf.leftFromPurchases().min(creditable).multiply(creditPerUnit);
    }

    /** What a shelf adds to the cost of a plan, in home currency: holding, less the credit for leftovers. */
    public BigDecimal stockCost(Shelf shelf) {
        return holding(shelf).subtract(credit(shelf));
    }

    /**
     * A lot of goods on the shelf or on order.
     *
     * @param quantity in the base unit
     * @param arrival the first period in which it is there: zero if it is on the shelf; may be after the last
     * @param usablePeriods the number of periods in which it can be used, including that of its arrival; zero if it has
     *     expired by then
     */
    public record Lot(BigDecimal quantity, int arrival, int usablePeriods) {

        public Lot {
            if (quantity.signum() < 0 || arrival < 0 || usablePeriods < 0) {
                throw new IllegalArgumentException("a lot must be zero or more, but was %s from %s for %s periods"
                        .formatted(quantity.toPlainString(), arrival, usablePeriods));
            }
        }

        /** A lot on the shelf. */
        public Lot(BigDecimal quantity, int usablePeriods) {
            this(quantity, 0, usablePeriods);
        }

        /** The last period it can be used in; before its arrival if it has expired by then. */
        public int lastPeriod() {
            return Need.lastPeriod(arrival, usablePeriods);
        }
    }
}
