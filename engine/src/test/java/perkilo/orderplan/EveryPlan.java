package perkilo.orderplan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;

/**
 * Tries every plan with so many packs of each offer and month at most: slow, and beyond doubt.
 *
 * @param mostPacks of one offer in one month
 */
record EveryPlan(int mostPacks) implements PlanPurchases {

    @Override
    public PlanOutcome plan(PurchaseProblem problem, SearchLimits limits) {
        Best best = new Best(problem);
        best.tryFrom(0, new ArrayList<>());
        PurchasePlan plan = best.plan;
        if (plan == null) {
            return new PlanOutcome.Impossible(List.of(new PlanOutcome.Shortfall(0, 0, "no plan.", "")));
        }
        PlanCost cost = PlanCost.of(problem, plan);
        return new PlanOutcome.Proven(plan, cost, cost.objective());
    }

    private final class Best {
        private final PurchaseProblem problem;
        private @Nullable PurchasePlan plan;
        private @Nullable BigDecimal least;

        Best(PurchaseProblem problem) {
            this.problem = problem;
        }

        void tryFrom(int place, List<PurchasePlan.Line> lines) {
            if (place == problem.quotes().size() * problem.periods()) {
                consider(new PurchasePlan(lines));
                return;
            }
            int quote = place / problem.periods();
            int period = place % problem.periods();
            tryFrom(place + 1, lines);
            for (int packs = 1; packs <= mostPacks; packs++) {
                lines.add(new PurchasePlan.Line(quote, period, packs));
                tryFrom(place + 1, lines);
                lines.remove(lines.size() - 1);
            }
        }

        private void consider(PurchasePlan candidate) {
            if (PlanCheck.violations(problem, candidate).isEmpty()) {
                BigDecimal cost = PlanCost.of(problem, candidate).objective();
                if (least == null || cost.compareTo(least) < 0) {
                    least = cost;
                    plan = candidate;
                }
            }
        }
    }
}
