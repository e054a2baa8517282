package perkilo.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;

/**
 * Scenarios costed beside today.
 *
 * @param today the complete runs as they are
 * @param scenarios each with its costs
 */
public record ScenarioCosts(List<RunCost> today, List<Costed> scenarios) {

    public ScenarioCosts {
        today = List.copyOf(today);
        scenarios = List.copyOf(scenarios);
    }

    /**
     * The costs of one scenario.
     *
     * @param runs one for each run of today, in the same order; null where it cannot be costed
     */
    public record Costed(Scenario scenario, List<@Nullable RunCost> runs) {}

    /** Costs the scenarios, each run with a purchase of its own. */
    public static ScenarioCosts of(
            CostOutcome.Costed costed, List<Scenario> scenarios, PlanPurchases planner, SearchLimits limits) {
        List<Costed> all = new ArrayList<>();
        for (Scenario scenario : scenarios) {
            Book book = scenario.edit().apply(costed.book());
            CostOutcome outcome = new CostRuns(planner, limits).cost(book);
            List<RunAnswer> answers = outcome instanceof CostOutcome.Costed one ? one.answers() : List.of();
            List<@Nullable RunCost> runs = new ArrayList<>();
            for (int at = 0; at < costed.answers().size(); at++) {
                if (costed.answers().get(at).isComplete()) {
                    RunAnswer answer = at < answers.size() ? answers.get(at) : null;
                    runs.add(answer != null && answer.isComplete() ? answer.cost() : null);
                }
            }
            all.add(new Costed(scenario, runs));
        }
        return new ScenarioCosts(costed.runs(), all);
    }

    /** The cost of one unit, or of one kilogram of bulk that is not filled. */
    public static BigDecimal ofOne(RunCost cost) {
        return Measure.ofOne(cost);
    }
}
