package perkilo.purchasing;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;

/**
 * The need of one item by period, and the stock that is there already.
 *
 * @param item the item's name
 * @param perPeriod the use in each period, in the base unit; as many as the problem has periods
 * @param stock on the shelf at the start, and on order already
 * @param usablePeriods how many periods a purchase may be used in, counting the period it arrives in; at least one, and
 *     {@link #UNLIMITED} if no shelf life is known
 * @param holdingPerUnit cost of one unit in stock for a unit of time, in home currency
 * @param creditPerUnit value of one unit left over at the end, in home currency; zero if leftovers have no value
 * @param creditable the largest leftover that gets the credit, because it can still be used; in the base unit
 * @param lengths by period: the time until the next, or until the end of all; in the unit of the holding cost
 * @param safety what has to be there and usable at the end of each period from a period on; in the base unit
 */
public record Need(
        String item,
        List<BigDecimal> perPeriod,
        List<Lot> stock,
        int usablePeriods,
        BigDecimal holdingPerUnit,
        BigDecimal creditPerUnit,
        BigDecimal creditable,
        List<Integer> lengths,
        Safety safety) {

    /** For an item without a known shelf life. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    public Need {
        requireNonNull(item, "item");
        perPeriod = List.copyOf(perPeriod);
        stock = List.copyOf(stock);
        lengths = List.copyOf(lengths);
        requireNonNull(safety, "safety");
        if (lengths.size() != perPeriod.size()) {
            throw new IllegalArgumentException(
                    "%s has %s periods, but %s lengths of periods".formatted(item, perPeriod.size(), lengths.size()));
        }
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

    /** A need with periods of equal length, one after the last as well, and without safety stock. */
    public Need(
            String item,
            List<BigDecimal> perPeriod,
            List<Lot> stock,
            int usablePeriods,
            BigDecimal holdingPerUnit,
            BigDecimal creditPerUnit,
            BigDecimal creditable) {
        this(
                item,
                perPeriod,
                stock,
                usablePeriods,
                holdingPerUnit,
                creditPerUnit,
                creditable,
                Collections.nCopies(perPeriod.size(), 1),
                Safety.NONE);
    }

    /** The same need, which keeps stock free of charge and gives no credit for leftovers. */
    public Need withFreeStock() {
        return new Need(
                item,
                perPeriod,
                stock,
                usablePeriods,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                lengths,
                safety);
    }

    /**
     * Stock that has to be there at all times, for what was not planned.
     *
     * @param quantity in the base unit; zero for none
     * @param from the first period at whose end it has to be there
     */
    public record Safety(BigDecimal quantity, int from) {

        /** No safety stock. */
        public static final Safety NONE = new Safety(BigDecimal.ZERO, 0);

        /** Whether there is any. */
        public boolean isNone() {
            return quantity.signum() == 0;
        }

        /** What has to be there at the end of a period. */
        public BigDecimal at(int period) {
            return period < from ? BigDecimal.ZERO : quantity;
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

    /** The time from a period to the end of all, in the unit of the holding cost. */
    public int untilEnd(int period) {
        int time = 0;
        for (int at = period; at < lengths.size(); at++) {
            time += lengths.get(at);
        }
        return time;
    }

    /** The holding cost of a shelf, in home currency. */
    BigDecimal holding(Shelf shelf) {
        BigDecimal kept = shelf.keptEarly();
        for (int period = 0; period < lengths.size(); period++) {
            kept = kept.add(shelf.closing().get(period).multiply(BigDecimal.valueOf(lengths.get(period))));
        }
        return kept.multiply(holdingPerUnit);
    }

    /** The first period at whose end a shelf has less than the safety stock; below zero if there is none. */
    public int firstBelowSafety(Shelf shelf) {
        for (int period = safety.from(); !safety.isNone() && period < lengths.size(); period++) {
            if (shelf.usable(period).compareTo(safety.quantity()) < 0) {
                return period;
            }
        }
        return -1;
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
     * @param early how long before its first period it is there, in the unit of the holding cost
     */
    public record Lot(BigDecimal quantity, int arrival, int usablePeriods, int early) {

        public Lot {
            if (quantity.signum() < 0 || arrival < 0 || usablePeriods < 0 || early < 0) {
                throw new IllegalArgumentException("a lot must be zero or more, but was %s from %s for %s periods"
                        .formatted(quantity.toPlainString(), arrival, usablePeriods));
            }
        }

        /** A lot that comes at the start of its first period. */
        public Lot(BigDecimal quantity, int arrival, int usablePeriods) {
            this(quantity, arrival, usablePeriods, 0);
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
