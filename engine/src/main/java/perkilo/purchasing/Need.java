package perkilo.purchasing;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.List;

/**
 * What is needed of one item, period by period, and what is there already.
 *
 * @param item the item's name
 * @param perPeriod what is used up in each period, in the base unit; as many as the problem has periods
 * @param stock what is on the shelf at the start, and what is on order already
 * @param usablePeriods how many periods a purchase may be used in, counting the period it arrives in; at least one, and
 *     {@link #UNLIMITED} where no shelf life is known
 * @param holdingPerUnit what one unit in stock at the end of a period costs, in home currency
 * @param creditPerUnit what one unit left over at the end is worth, in home currency; zero where leftovers count for
 *     nothing
 * @param creditable how much of what is left over can still be used, in the base unit: no more than that gets the
 *     credit
 */
public record Need(
        String item,
        List<BigDecimal> perPeriod,
        List<Lot> stock,
        int usablePeriods,
        BigDecimal holdingPerUnit,
        BigDecimal creditPerUnit,
        BigDecimal creditable) {

    /** For an item whose shelf life is not known. */
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
     * The last period that something can be used in; never earlier because the sum is too large for a number.
     *
     * @param arrival the first
     * @param usablePeriods how many, counting the first
     * @return {@link #UNLIMITED} where no shelf life is known
     */
    public static int lastPeriod(int arrival, int usablePeriods) {
        return usablePeriods == UNLIMITED
                ? UNLIMITED
                : (int) Math.min((long) arrival + usablePeriods - 1, UNLIMITED - 1L);
    }

    /** A need in one period, bought for at once, with nothing on the shelf and nothing for leftovers. */
    public static Need once(String item, BigDecimal quantity) {
        return new Need(
                item, List.of(quantity), List.of(), UNLIMITED, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);
    }

    /** What is needed in all periods together. */
    public BigDecimal total() {
        return perPeriod.size() == 1 ? perPeriod.get(0) : perPeriod.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * What has to be bought in all periods together: what the stock, oldest expiry first, does not cover.
     *
     * @return per period what is missing, in the base unit; as many as periods
     */
    public List<BigDecimal> net() {
        return Shelf.of(this).uncovered();
    }

    /** What keeping a shelf of it costs, in home currency. */
    BigDecimal holding(Shelf shelf) {
        return shelf.closing().stream().reduce(BigDecimal.ZERO, BigDecimal::add).multiply(holdingPerUnit);
    }

    /** What is left on a shelf of it is worth, in home currency. */
    BigDecimal credit(Shelf shelf) {
        return shelf.leftFromPurchases().min(creditable).multiply(creditPerUnit);
    }

    /** What a shelf of it adds to the cost of a plan, in home currency: holding, less the credit for leftovers. */
    public BigDecimal stockCost(Shelf shelf) {
        return holding(shelf).subtract(credit(shelf));
    }

    /**
     * Something on the shelf, or on order.
     *
     * @param quantity in the base unit
     * @param arrival the period that it is there for: zero if it is on the shelf; may lie beyond the last
     * @param usablePeriods how many periods it can be used in, counting the one it arrives in; zero if it has expired
     *     by then
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
