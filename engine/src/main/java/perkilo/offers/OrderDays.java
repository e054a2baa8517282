package perkilo.offers;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Days in a row on which orders can be placed at a price. A price that counts again later has several of them.
 *
 * @param first not before the day from which prices are seen
 * @param last null if no end is known
 * @param next the day that another price of the same pack takes over; null if none is known
 * @param endedBy the list that names the pack without a price, if {@code last} is earlier than quoted because of it;
 *     else null
 * @param after the newer quote after whose end this price counts again; null if it begins on its own day
 */
public record OrderDays(
        LocalDate first,
        @Nullable LocalDate last,
        @Nullable LocalDate next,
        @Nullable Unpriced endedBy,
        @Nullable After after) {

    /**
     * What a price counts again after.
     *
     * @param newer the newer quote of the pack
     * @param ended its last day
     */
    public record After(Offer newer, LocalDate ended) {}

    /** Whether an order can be placed on a day. */
    public boolean contains(LocalDate day) {
        return !day.isBefore(first) && (last == null || !day.isAfter(last));
    }

    /** Whether there are days between this price and the next without a price. */
    public boolean leavesGap() {
        return next != null && last != null && last.plusDays(1).isBefore(next);
    }
}
