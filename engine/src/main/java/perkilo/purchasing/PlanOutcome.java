package perkilo.purchasing;

import java.math.BigDecimal;
import java.util.List;

/** The result of the search for the cheapest purchase. */
public sealed interface PlanOutcome {

    /**
     * No plan is cheaper: the gap to the bound is below half a minor unit of the home currency.
     *
     * @param plan what to buy
     * @param cost what it costs, exactly
     * @param bound no plan can cost less than this, in home currency
     */
    record Proven(PurchasePlan plan, PlanCost cost, BigDecimal bound) implements PlanOutcome {}

    /**
     * The search was ended before it could prove that no plan is cheaper.
     *
     * @param plan the best plan found
     * @param cost what it costs, exactly
     * @param bound no plan can cost less than this, in home currency
     */
    record BestSoFar(PurchasePlan plan, PlanCost cost, BigDecimal bound) implements PlanOutcome {}

    /**
     * No plan covers every need.
     *
     * @param shortfalls the needs that cannot be covered, and why; at least one
     */
    record Impossible(List<Shortfall> shortfalls) implements PlanOutcome {

        public Impossible {
            shortfalls = List.copyOf(shortfalls);
        }
    }

    /**
     * The search was ended before it found any plan, and without a proof that there is none.
     *
     * @param bound no plan can cost less than this, in home currency
     */
    record NoneFound(BigDecimal bound) implements PlanOutcome {}

    /**
     * A need that cannot be covered.
     *
     * @param item index of the need; −1 if the plan as a whole is not possible (a limit on cash)
     * @param period the first period, from zero, that is short
     * @param reason the cause, in words for a person
     * @param remedy the smallest change that would help, in words for a person; empty if none is known
     */
    record Shortfall(int item, int period, String reason, String remedy) {}
}
