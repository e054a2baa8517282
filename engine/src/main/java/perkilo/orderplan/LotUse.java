package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.origin.Day;
import perkilo.purchasing.LineCost;

/**
 * A lot and its use by day. Quantities are in kilograms or pieces.
 *
 * @param source stock, goods on order, or a purchase
 * @param quantity at first
 * @param from the day from which it is there
 * @param arrival the first period in which it is there; may be after the last
 * @param lastPeriod the last period it can be used in; below zero if it has expired already, a large number if no shelf
 *     life is known
 * @param lastDay the last day it may be used; null if no shelf life is known
 * @param used per period
 */
public record LotUse(
        Source source,
        BigDecimal quantity,
        LocalDate from,
        int arrival,
        int lastPeriod,
        @Nullable LocalDate lastDay,
        List<BigDecimal> used) {

    public LotUse {
        used = List.copyOf(used);
    }

    /** The source of a lot. */
    public sealed interface Source {}

    /**
     * It is on the shelf, or on order already.
     *
     * @param stock its row
     */
    public record Held(StockOnHand stock) implements Source {}

    /**
     * It is bought in the plan.
     *
     * @param line of the plan
     * @param listing the offer
     */
    public record Bought(LineCost line, Listing listing) implements Source {}

    /** Whether it was on the shelf at the start. */
    public boolean isOnShelf() {
        return source instanceof Held held && !held.stock().lot().isOnOrder();
    }

    /** Whether it was on order at the start. */
    public boolean isOnOrder() {
        return source instanceof Held held && held.stock().lot().isOnOrder();
    }

    /** The day that goods on order are expected; null for other lots. */
    public @Nullable Day expected() {
        return source instanceof Held held ? held.stock().lot().expected() : null;
    }

    /** Whether it is bought in the plan. */
    public boolean isBought() {
        return source instanceof Bought;
    }

    /** Whether it arrives for a day of the horizon. */
    public boolean arrivesIn(Horizon horizon) {
        return arrival < horizon.periods();
    }

    /** Whether it can be used in a period. */
    public boolean isUsableIn(int period) {
        return arrival <= period && period <= lastPeriod;
    }

    /** The first period in which some of it is used; below zero if none is. */
    int firstUse() {
        for (int period = 0; period < used.size(); period++) {
            if (used.get(period).signum() > 0) {
                return period;
            }
        }
        return -1;
    }

    /** The quantity not used by the end of the horizon. */
    public BigDecimal left() {
        return used.stream().reduce(quantity, BigDecimal::subtract);
    }

    /**
     * The period at whose end the rest is given up: the last one in which it can be used, or that of its arrival if it
     * has expired by then.
     */
    public int givenUpIn() {
        return Math.max(arrival, lastPeriod);
    }

    /** Whether some of it is there at the end of the horizon and can be used later. */
    public boolean isLeftAfter(Horizon horizon) {
        return arrivesIn(horizon) && outlives(horizon) && left().signum() > 0;
    }

    /** Whether it can still be used after the horizon; also for lots that arrive only then. */
    public boolean outlives(Horizon horizon) {
        return lastPeriod >= horizon.periods();
    }
}
