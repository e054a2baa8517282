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
 * @param fits whether it would do the job, and saves too little or nothing in this formula alone
 */
public record Rejected(Trial trial, Closeness closeness, List<Verdict> verdicts, String reason, boolean fits) {

    public Rejected {
        verdicts = List.copyOf(verdicts);
    }
}
