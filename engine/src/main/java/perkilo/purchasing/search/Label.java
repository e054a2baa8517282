package perkilo.purchasing.search;

import org.jspecify.annotations.Nullable;

/**
 * A position of the supply and the cheapest way to it.
 *
 * @param base of the grid
 * @param units on top of the base
 * @param cost the least total
 * @param before the position that it was reached from; null at the start
 * @param offer the offer of the line that led to it; null if an order was closed without a line
 * @param steps of the line
 */
record Label(
        int base,
        long units,
        double cost,
        @Nullable Label before,
        @Nullable PackChoice offer,
        long steps) {

    static final Label START = new Label(0, 0, 0, null, null, 0);

    /** The same position with a charge on top. */
    Label charged(double charge) {
        return new Label(base, units, cost + charge, this, null, 0);
    }
}
