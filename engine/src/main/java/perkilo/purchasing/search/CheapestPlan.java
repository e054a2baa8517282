package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.util.List;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;

/** Finds the cheapest plan and proves it; among plans of the same cost, the one that a buyer would choose. */
public final class CheapestPlan implements PlanPurchases {
    /** A plan is proven if its gap to the bound is smaller than this: half a minor unit of home currency. */
    private static final BigDecimal PROVEN = new BigDecimal("0.005");

    @Override
    public PlanOutcome plan(PurchaseProblem problem, SearchLimits limits) {
        SearchMarket market = new SearchMarket(problem);
        Planning planning = new Planning(market);
        List<PlanOutcome.Shortfall> shortfalls = new Uncoverable(planning).shortfalls();
        if (!shortfalls.isEmpty()) {
            return new PlanOutcome.Impossible(shortfalls);
        }
        Deadline deadline = new Deadline(limits);
        double bound = new BranchAndBound(planning, deadline).search();
        JointPlan best = planning.incumbent.best();
        if (best != null) {
            return outcome(problem, new Consolidation(planning, limits).of(best.plan()), bound);
        }
        return bound == Double.POSITIVE_INFINITY
                ? new PlanOutcome.Impossible(List.of(new CashShortfall(problem, deadline).shortfall()))
                : new PlanOutcome.NoneFound(BigDecimal.valueOf(bound));
    }

    private static PlanOutcome outcome(PurchaseProblem problem, PurchasePlan plan, double bound) {
        PlanCost cost = PlanCost.of(problem, plan);
        BigDecimal exact = cost.objective();
        BigDecimal atLeast = BigDecimal.valueOf(bound).min(exact);
        return exact.subtract(atLeast).compareTo(PROVEN) < 0
                ? new PlanOutcome.Proven(plan, cost, atLeast)
                : new PlanOutcome.BestSoFar(plan, cost, atLeast);
    }
}
