package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.swaps.RecipeCheck;

/** Service that costs every run of every product of one book. */
public final class CostBook {

    /**
     * Reads a book and costs its runs.
     *
     * @throws IOException if a file cannot be read
     */
    public CostAnswer cost(CostRequest request, Watch watch) throws IOException {
        Reading<Book> reading = BookReading.of(request.sources(), request.today(), watch);
        return cost(request.sources().book(), reading, request.sizes(), watch);
    }

    /** Costs the runs of a book that has been read before. */
    public CostAnswer cost(Path file, Reading<Book> reading, RunSizes sizes, Watch watch) {
        List<Finding> findings = new ArrayList<>(reading.findings());
        if (reading.value().gaps().isEverything()) {
            return new CostAnswer.BadInput(reading.account(), findings);
        }
        Book book = sizes.applyTo(reading.value());
        findings.addAll(RunSizes.problems(file, book));
        if (RunSizes.isNothing(book)) {
            return new CostAnswer.BadInput(reading.account(), findings);
        }
        Watched costing = new Watched(watch, Stage.COSTING, book.runs().size());
        CostOutcome outcome = new CostRuns(Planners.forRuns(), SearchLimits.usual(costing)).cost(book, costing);
        findings.addAll(outcome.findings());
        findings.addAll(RecipeCheck.of(book));
        return outcome instanceof CostOutcome.Costed costed
                ? new CostAnswer.Costed(costed, findings)
                : new CostAnswer.NoPurchase(findings);
    }
}
