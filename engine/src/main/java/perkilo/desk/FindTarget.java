package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.RunCost;
import perkilo.decision.SizeAdvice;
import perkilo.decision.SizeSearch;
import perkilo.decision.TargetCost;
import perkilo.decision.TargetSearch;
import perkilo.model.Book;
import perkilo.model.Product;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;
import perkilo.swaps.SwapFinder;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.lp.OjalgoSolver;

/** Service that says what a unit may cost at a shop price and a margin, and what would bring it there. */
public final class FindTarget {

    /**
     * Reads a book and works its target costs out.
     *
     * @throws IOException if a file cannot be read
     */
    public TargetAnswer find(TargetRequest request, Watch watch) throws IOException {
        Reading<Book> reading = BookReading.of(request.sources(), request.today(), watch);
        return find(request.sources().book(), reading, request.sizes(), watch);
    }

    /** Works the target costs of a book out that has been read before. */
    public TargetAnswer find(Path file, Reading<Book> reading, RunSizes sizes, Watch watch) {
        List<Finding> findings = new ArrayList<>(reading.findings());
        if (reading.value().gaps().isEverything()) {
            return new TargetAnswer.Nothing(reading.account(), findings);
        }
        Book book = sizes.applyTo(reading.value());
        findings.addAll(RunSizes.problems(file, book));
        if (RunSizes.isNothing(book)) {
            return new TargetAnswer.Nothing(reading.account(), findings);
        }
        Watched costing = new Watched(watch, Stage.COSTING, book.runs().size());
        CostOutcome outcome = new CostRuns(Planners.forRuns(), SearchLimits.usual(costing)).cost(book, costing);
        findings.addAll(outcome.findings());
        List<Finding> without = withoutTarget(book);
        if (!(outcome instanceof CostOutcome.Costed costed)) {
            return new TargetAnswer.Nothing(reading.account(), findings);
        }
        if (without.size() == book.products().size()) {
            findings.add(Finding.error(BookReading.whole(file), DeskMessages.noTarget()));
            return new TargetAnswer.Nothing(reading.account(), findings);
        }
        findings.addAll(without);
        return new TargetAnswer.Found(costed, targets(costed, watch), findings);
    }

    private static List<TargetCost> targets(CostOutcome.Costed costed, Watch watch) {
        List<RunCost> open = TargetSearch.open(costed);
        List<SizeAdvice> sizes = List.of();
        SwapOutcome.@Nullable Found swaps = null;
        PlanPurchases planner = Planners.forRuns();
        if (!open.isEmpty()) {
            Watched sizing = new Watched(watch, Stage.SIZES, 0);
            sizes = SizeSearch.of(costed, sizing.counting(planner), SearchLimits.usual(sizing));
            swaps = swaps(costed, open, watch);
        }
        Watched trying = new Watched(watch, Stage.TARGETS, costed.runs().size());
        return TargetSearch.of(costed, sizes, swaps, planner, SearchLimits.usual(trying), trying);
    }

    private static SwapOutcome.@Nullable Found swaps(CostOutcome.Costed costed, List<RunCost> open, Watch watch) {
        Watched comparing = new Watched(watch, Stage.COMPARING, 0);
        Book book = costed.book()
                .withRuns(open.stream().map(cost -> cost.needs().run()).toList());
        SwapOutcome outcome = new SwapFinder(Planners.forWhatIfs(), SearchLimits.usual(comparing), new OjalgoSolver())
                .find(book, SwapOptions.usual().telling(comparing));
        return outcome instanceof SwapOutcome.Found found ? found : null;
    }

    /** A note for each product that lacks a target retail price or a target margin. */
    private static List<Finding> withoutTarget(Book book) {
        List<Finding> notes = new ArrayList<>();
        for (Product product : book.products().values()) {
            if (product.targetRetailPrice() == null || product.targetMargin() == null) {
                String column = product.targetRetailPrice() == null ? "Target retail price" : "Target margin %";
                notes.add(Finding.note(product.origin(), DeskMessages.noTargetOf(product.name(), column)));
            }
        }
        return notes;
    }
}
