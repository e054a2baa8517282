package perkilo.swaps;

import java.util.List;
import perkilo.swaps.closeness.Closeness;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.trial.Trial;

/**
 * A material of the right role that is not offered.
 *
 * @param trial the recipe before and after
 * @param closeness how close the two materials are
 * @param verdicts what each gate says
 * @param reason why it is not offered, in full sentences
 */
public record Rejected(Trial trial, Closeness closeness, List<Verdict> verdicts, String reason) {

    public Rejected {
        verdicts = List.copyOf(verdicts);
    }

    /** Whether it would do the job, and is not offered only because it saves nothing in this formula alone. */
    public boolean isOnlyWithoutSaving() {
        return reason.equals(SwapMessages.savesNothing());
    }
}
