package perkilo.costing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import perkilo.model.Book;
import perkilo.model.Run;
import perkilo.origin.Finding;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;

/** Costs every run of a book. */
public final class CostRuns {

    private final PlanPurchases planner;
    private final SearchLimits limits;

    /**
     * Costing with a planner.
     *
     * @param planner finds the purchase of each run
     * @param limits for the search, for each run
     */
    public CostRuns(PlanPurchases planner, SearchLimits limits) {
        this.planner = planner;
        this.limits = limits;
    }

    /**
     * Costs every run, each as if it were the only one.
     *
     * @param book free of errors
     * @return the costs, or everything that cannot be bought
     */
    public CostOutcome cost(Book book) {
        return cost(book, done -> {});
    }

    /**
     * The same, with progress reports.
     *
     * @param progress receives the number of runs that are done, after each
     */
    public CostOutcome cost(Book book, IntConsumer progress) {
        Market market = new Market(book);
        PurchaseForRun purchaser = new PurchaseForRun(market, planner, limits);
        RunCosting costing = new RunCosting(market);
        Set<Finding> problems = new LinkedHashSet<>();
        Set<Finding> notes = new LinkedHashSet<>();
        List<RunCost> costs = new ArrayList<>();
        int done = 0;
        for (Run run : book.runs()) {
            RunNeeds needs = RunNeeds.of(book, run);
            notes.addAll(RunNotes.of(market, needs));
            List<Source> sources = Source.of(market, needs);
            PurchaseForRun.Outcome outcome = purchaser.find(needs, sources);
            problems.addAll(outcome.problems());
            Purchase purchase = outcome.purchase();
            if (purchase != null) {
                RunCost cost = costing.cost(needs, sources, purchase);
                costs.add(cost);
                notes.addAll(RunNotes.of(cost));
            }
            progress.accept(++done);
        }
        if (!problems.isEmpty()) {
            return new CostOutcome.NoPurchase(List.copyOf(problems));
        }
        notes.addAll(PieceWeights.unknown(
                costs.stream().flatMap(cost -> cost.purchase().bought())));
        return new CostOutcome.Costed(book, market, costs, List.copyOf(notes));
    }
}
