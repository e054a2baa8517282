package perkilo.offers;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The days on which orders can be placed at a price.
 *
 * @param first not before the day from which prices are seen
 * @param last null if no end is known
 * @param next the day that another price of the same pack takes over; null if none is known
 * @param endedBy the list that names the pack without a price, if {@code last} is earlier than quoted because of it;
 *     else null
 */
public record OrderDays(
        LocalDate first,
        @Nullable LocalDate last,
        @Nullable LocalDate next,
        @Nullable Unpriced endedBy) {

    /** Whether an order can be placed on a day. */
    public boolean contains(LocalDate day) {
        return !day.isBefore(first) && (last == null || !day.isAfter(last));
    }

    /** Whether there are days between this price and the next without a price. */
    public boolean leavesGap() {
        return next != null && last != null && last.plusDays(1).isBefore(next);
    }
}
