package perkilo.costing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import perkilo.model.Book;
import perkilo.model.Gaps;
import perkilo.model.Run;
import perkilo.origin.Decimals;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
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
     * @param book what could be read of a book
     * @return the costs, and of runs that cannot be costed completely what is known and what is missing
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
        Costing costing = new Costing(market);
        List<RunAnswer> answers = new ArrayList<>();
        int done = 0;
        for (Run run : book.runs()) {
            answers.add(costing.answer(run));
            progress.accept(++done);
        }
        for (Gaps.Gap gap : book.gaps().of(Gaps.Kind.RUN, "")) {
            String where = gap.origin().where();
            String name = gap.what().isEmpty() ? where : gap.what();
            Missing row = new Missing(where, Missing.Part.EVERYTHING, "error in " + where, gap.origin());
            answers.add(new RunAnswer(name, name, false, gap.origin(), null, List.of(row)));
        }
        List<Finding> findings = new ArrayList<>(costing.problems);
        findings.addAll(costing.notes);
        findings.addAll(PieceWeights.unknown(answers.stream()
                .flatMap(answer -> Stream.ofNullable(answer.cost()))
                .flatMap(cost -> cost.purchase().bought())));
        boolean nothing = !answers.isEmpty() && answers.stream().noneMatch(RunAnswer::saysAnything);
        return nothing ? new CostOutcome.NoPurchase(findings) : new CostOutcome.Costed(book, market, answers, findings);
    }

    /** The costing of the runs of one book. */
    private final class Costing {

        private final Market market;
        private final PurchaseForRun purchaser;
        private final RunCosting adding;
        private final Set<Finding> problems = new LinkedHashSet<>();
        private final Set<Finding> notes = new LinkedHashSet<>();

        Costing(Market market) {
            this.market = market;
            this.purchaser = new PurchaseForRun(market, planner, limits);
            this.adding = new RunCosting(market);
        }

        RunAnswer answer(Run run) {
            Book book = market.book();
            RunGaps gaps = RunGaps.of(book, run);
            if (gaps.isAll()) {
                return unknown(run, gaps.missing());
            }
            RunNeeds needs = RunNeeds.of(book, run).without(gaps.leftOut());
            notes.addAll(RunNotes.of(market, needs));
            List<Source> sources = Source.of(market, needs);
            PurchaseForRun.Known known = purchaser.findKnown(needs, sources);
            List<Missing> missing = new ArrayList<>(gaps.missing());
            known.unsold().forEach((source, why) -> missing.add(unsold(source.item(), why)));
            problems.addAll(known.problems());
            Purchase purchase = known.purchase();
            if (purchase == null) {
                return unknown(run, missing);
            }
            RunCost cost = adding.cost(needs, sources, purchase, known.unsold().keySet());
            notes.addAll(RunNotes.of(cost, market.book().settings()));
            return RunAnswer.partly(cost, missing);
        }

        /** An item without a price; reported, unless an error that was reported before is the reason. */
        private Missing unsold(Item item, Finding why) {
            Gaps gaps = market.book().gaps();
            Missing.Part part = item.isMaterial() ? Missing.Part.MATERIALS : Missing.Part.PACKAGING;
            Optional<String> reported =
                    market.listings(item.name()).isEmpty() ? gaps.whyNoPrice(item.name()) : Optional.empty();
            if (reported.isEmpty()) {
                problems.add(why);
            }
            Origin cell = gaps.first(Gaps.Kind.OFFER, item.name())
                    .map(Gaps.Gap::origin)
                    .orElse(item.origin());
            return new Missing(item.name(), part, reported.orElse("no price"), cell);
        }

        private static RunAnswer unknown(Run run, List<Missing> missing) {
            if (run instanceof Run.OfProduct units) {
                String title = Decimals.readable(units.units().value(), 0) + " × " + units.product();
                return new RunAnswer(units.product(), title, false, run.origin(), null, missing);
            }
            if (run instanceof Run.OfBulk bulk) {
                String title = Decimals.readable(bulk.batchKg().value(), 3) + " kg of " + bulk.formula();
                return new RunAnswer(bulk.formula(), title, true, run.origin(), null, missing);
            }
            throw new AssertionError(run);
        }
    }
}
