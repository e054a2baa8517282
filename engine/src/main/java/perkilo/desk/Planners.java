package perkilo.desk;

import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.quick.QuickPlanner;

/** Which planner a service works with. */
final class Planners {

    private Planners() {}

    /**
     * A planner for the runs of one book: all sets of suppliers are tried where there are few, which proves most runs
     * at once; what that leaves open goes to the full search.
     */
    static PlanPurchases forRuns() {
        PlanPurchases full = new CheapestPlan();
        PlanPurchases quick = new QuickPlanner(full);
        return (problem, limits) -> {
            PlanOutcome outcome = quick.plan(problem, limits);
            boolean goesOn = outcome instanceof PlanOutcome.BestSoFar
                    && !limits.cancelled().getAsBoolean();
            return goesOn ? full.plan(problem, limits) : outcome;
        };
    }

    /** A planner for the orders of a book. */
    static PlanPurchases forOrders() {
        return new CheapestPlan();
    }

    /** A planner for very many purchases that differ in an item or two: what it cannot prove comes with its bound. */
    static PlanPurchases forWhatIfs() {
        return new QuickPlanner(new CheapestPlan());
    }
}
