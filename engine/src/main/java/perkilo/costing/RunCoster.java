package perkilo.costing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Gaps;
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
        if (purchase != null) {
            return new Outcome(costing.cost(needs, sources, purchase), List.of(), List.of());
        }
        List<Source> unsold = sources.stream()
                .filter(source ->
                        source.isBought() && source.offered().listings().isEmpty())
                .toList();
        List<String> missing = unsold.stream()
                .map(source -> source.item().name() + " (no price)")
                .toList();
        Gaps gaps = market.book().gaps();
        boolean known = !unsold.isEmpty() && unsold.stream().allMatch(source -> isReported(gaps, source));
        List<Finding> problems = known ? List.of() : found.problems();
        return new Outcome(null, problems, missing.isEmpty() ? List.of("a purchase") : missing);
    }

    private static boolean isReported(Gaps gaps, Source source) {
        return gaps.whyNoPrice(source.item().name()).isPresent();
    }

    /**
     * The result for a run.
     *
     * @param cost null if something cannot be bought
     * @param problems what cannot be bought and was not reported before; empty if there is a cost
     * @param missing what cannot be bought, in words; empty if there is a cost
     */
    public record Outcome(@Nullable RunCost cost, List<Finding> problems, List<String> missing) {

        public Outcome {
            problems = List.copyOf(problems);
            missing = List.copyOf(missing);
        }
    }
}
