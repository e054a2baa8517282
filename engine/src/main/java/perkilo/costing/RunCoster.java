package perkilo.costing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;

/**
 * Costs one run after the other over the same market.
 *
 * <p>For what-ifs that change a formula and leave materials and offers alone: the market is read once. May be used from
 * several threads where the planner may.
 */
public final class RunCoster {

    private final Market market;
    private final PurchaseForRun purchaser;
    private final RunCosting costing;

    /**
     * A coster over a market.
     *
     * @param market who sells what
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
     * What came of it.
     *
     * @param cost null where something cannot be bought
     * @param problems what cannot be bought; none where there is a cost
     */
    public record Outcome(@Nullable RunCost cost, List<Finding> problems) {

        public Outcome {
            problems = List.copyOf(problems);
        }
    }
}
