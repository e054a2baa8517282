package perkilo.desk;

import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.quick.QuickPlanner;

/** Chooses the planner for a service. */
final class Planners {

    private Planners() {}

    /**
     * A planner for the runs of one book. The quick planner tries all sets of suppliers where there are few, which
     * proves most plans at once; the full search takes what is left unproven.
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

    /** A planner for very many purchases that differ in one or two items; an unproven plan comes with its bound. */
    static PlanPurchases forWhatIfs() {
        return new QuickPlanner(new CheapestPlan());
    }
}
