package perkilo.ordering;

import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;

/** Finds the cheapest plan and proves it. */
public final class CheapestPlan implements PlanPurchases {

    @Override
    public PlanOutcome plan(PurchaseProblem problem, SearchLimits limits) {
        throw new UnsupportedOperationException("being written");
    }
}
