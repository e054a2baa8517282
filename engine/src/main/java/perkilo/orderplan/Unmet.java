package perkilo.orderplan;

import java.util.List;
import perkilo.origin.Counted;

/**
 * The needs that a plan does not meet, or not in time.
 *
 * @param late planned, but later than needed
 * @param notCovered not planned
 */
public record Unmet(List<LateNeed> late, List<NotCovered> notCovered) {

    /** Everything is met in time. */
    public static final Unmet NONE = new Unmet(List.of(), List.of());

    public Unmet {
        late = List.copyOf(late);
        notCovered = List.copyOf(notCovered);
    }

    /** Whether everything is met in time. */
    public boolean isEmpty() {
        return late.isEmpty() && notCovered.isEmpty();
    }

    /** The headline, such as {@code Not complete: 2 needs are late, 1 need is not covered}; empty if all is met. */
    public String headline() {
        if (isEmpty()) {
            return "";
        }
        String first = late.isEmpty() ? "" : count(late.size()) + " late";
        String second = notCovered.isEmpty() ? "" : count(notCovered.size()) + " not covered";
        return "Not complete: " + first + (first.isEmpty() || second.isEmpty() ? "" : ", ") + second;
    }

    private static String count(int needs) {
        return Counted.of(needs, "need") + (needs == 1 ? " is" : " are");
    }
}
