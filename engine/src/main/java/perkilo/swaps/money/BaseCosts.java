package perkilo.swaps.money;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Missing;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.costing.RunGaps;
import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.model.Run;
import perkilo.origin.Finding;

/**
 * The present costs of the runs of a formula.
 *
 * @param runs the runs that are complete; null if there is none
 * @param problems what cannot be bought; empty if everything can
 * @param left the runs that are left out, each with what it lacks
 */
public record BaseCosts(@Nullable RunsOfFormula runs, List<Finding> problems, List<LeftOut> left) {

    public BaseCosts {
        problems = List.copyOf(problems);
        left = List.copyOf(left);
    }

    /**
     * A run that is left out.
     *
     * @param title the run in words
     * @param missing what it lacks
     */
    public record LeftOut(String title, Run run, List<String> missing) {

        public LeftOut {
            missing = List.copyOf(missing);
        }
    }

    /** Costs every run of a formula that is known completely. */
    public static BaseCosts of(Book book, RunCoster coster, Formula formula) {
        List<LeftOut> left = new ArrayList<>();
        List<RunNeeds> needs = new ArrayList<>();
        for (Run run : RunsOfFormula.of(book, formula)) {
            List<Missing> missing = RunGaps.of(book, run).missing();
            if (missing.isEmpty()) {
                needs.add(RunNeeds.of(book, run));
            } else {
                List<String> names = missing.stream().map(Missing::words).toList();
                left.add(new LeftOut(Gaps.name(run), run, names));
            }
        }
        List<String> keys = RunsOfFormula.keys(needs);
        List<RunCoster.Outcome> outcomes =
                needs.parallelStream().map(coster::cost).toList();
        Map<String, RunCost> base = new LinkedHashMap<>();
        List<Finding> problems = new ArrayList<>();
        for (int i = 0; i < outcomes.size(); i++) {
            RunCost cost = outcomes.get(i).cost();
            problems.addAll(outcomes.get(i).problems());
            if (cost == null) {
                List<String> why = outcomes.get(i).missing();
                left.add(new LeftOut(needs.get(i).title(), needs.get(i).run(), why));
            } else {
                base.put(keys.get(i), cost);
            }
        }
        return new BaseCosts(base.isEmpty() ? null : new RunsOfFormula(book, coster, base), problems, left);
    }
}
