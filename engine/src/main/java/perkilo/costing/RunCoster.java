package perkilo.costing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;

/**
 * Costs one run after the other over the same market.
 *
 * <p>For what-ifs that change a formula but no materials or offers: the market is read once. Safe for several threads
 * if the planner is.
 */
public final class RunCoster {

    private final Market market;
    private final PurchaseForRun purchaser;
    private final RunCosting costing;

    /**
     * A coster over a market.
     *
     * @param market the offers
     * @param planner finds the purchase of each run
     * @param limits for the search, for each run
     */
    public RunCoster(Market market, PlanPurchases planner, SearchLimits limits) {
        this.market = market;
        this.purchaser = new PurchaseForRun(market, planner, limits);
        this.costing = new RunCosting(market);
    }

    /** Finds the cheapest purchase for a run's needs and adds up what the run costs. */
    public Outcome cost(RunNeeds needs) {
        List<Source> sources = Source.of(market, needs);
        PurchaseForRun.Outcome found = purchaser.find(needs, sources);
        Purchase purchase = found.purchase();
        return new Outcome(purchase == null ? null : costing.cost(needs, sources, purchase), found.problems());
    }

    /**
     * The result for a run.
     *
     * @param cost null if something cannot be bought
     * @param problems what cannot be bought; empty if there is a cost
     */
    public record Outcome(@Nullable RunCost cost, List<Finding> problems) {

        public Outcome {
            problems = List.copyOf(problems);
        }
    }
}
