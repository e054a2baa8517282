package perkilo.purchasing;

/** Finds what to buy: the cheapest plan that covers every need. */
@FunctionalInterface
public interface PlanPurchases {

    /**
     * Finds the plan with the lowest {@link PlanCost#objective()}.
     *
     * <p>The same problem gets the same plan on every machine and in every run; the time limit only ends the search
     * early.
     *
     * @param problem what is needed and who sells it
     * @param limits when to stop
     * @return the cheapest plan with its proof, the best one so far with its bound, or why there is none
     */
    PlanOutcome plan(PurchaseProblem problem, SearchLimits limits);
}
