package perkilo.purchasing;

import java.util.List;

/**
 * When one item arrives that is ordered from one vendor for a period, and how long it can be used.
 *
 * @param early by period: how long before the period it arrives, in the unit of a need's holding cost; {@link #NEVER}
 *     if nothing can be ordered for the period
 * @param last by period: the last period in which it can be used; beyond the last period of all, a larger number is a
 *     later end
 */
public record Deliveries(List<Integer> early, List<Integer> last) {

    /** Nothing can be ordered for a period. */
    public static final int NEVER = -1;

    public Deliveries {
        early = List.copyOf(early);
        last = List.copyOf(last);
    }

    /** Whether something can be ordered for a period. */
    public boolean isFor(int period) {
        return early.get(period) != NEVER;
    }
}
