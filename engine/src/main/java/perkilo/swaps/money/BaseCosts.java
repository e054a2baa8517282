package perkilo.swaps.money;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.origin.Finding;

/**
 * The present costs of the runs of a formula.
 *
 * @param runs null if something cannot be bought
 * @param problems what cannot be bought; empty if there are runs
 */
public record BaseCosts(@Nullable RunsOfFormula runs, List<Finding> problems) {

    public BaseCosts {
        problems = List.copyOf(problems);
    }

    /** Costs every run of a formula. */
    public static BaseCosts of(Book book, RunCoster coster, Formula formula) {
        List<RunNeeds> needs = RunsOfFormula.of(book, formula).stream()
                .map(run -> RunNeeds.of(book, run))
                .toList();
        List<String> keys = RunsOfFormula.keys(needs);
        List<RunCoster.Outcome> outcomes =
                needs.parallelStream().map(coster::cost).toList();
        Map<String, RunCost> base = new LinkedHashMap<>();
        List<Finding> problems = new ArrayList<>();
        for (int i = 0; i < outcomes.size(); i++) {
            RunCost cost = outcomes.get(i).cost();
            problems.addAll(outcomes.get(i).problems());
            if (cost != null) {
                base.put(keys.get(i), cost);
            }
        }
        return problems.isEmpty()
                ? new BaseCosts(new RunsOfFormula(book, coster, base), List.of())
                : new BaseCosts(null, problems);
    }
}
