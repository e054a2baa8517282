package perkilo.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.swaps.RecipeCheck;

/**
 * What costing one book came to.
 *
 * @param costed null where it could not be costed
 * @param findings of the reading and of the costing
 * @param exit the exit code that it deserves
 */
record CostedBook(CostOutcome.@Nullable Costed costed, List<Finding> findings, int exit) {

    /** Costs the runs of a book that was read, or those of the command line. */
    static CostedBook of(Path file, Reading<Book> reading, RunOptions runs) {
        List<Finding> findings = new ArrayList<>(reading.findings());
        if (reading.hasErrors()) {
            return new CostedBook(null, findings, Exit.BAD_INPUT);
        }
        Book book = runs.applyTo(reading.value());
        List<Finding> problems = RunOptions.problems(file, book);
        findings.addAll(problems);
        if (!problems.isEmpty()) {
            return new CostedBook(null, findings, Exit.BAD_INPUT);
        }
        CostOutcome outcome = new CostRuns(Planners.forRuns(), SearchLimits.usual()).cost(book);
        findings.addAll(outcome.findings());
        findings.addAll(RecipeCheck.of(book));
        return outcome instanceof CostOutcome.Costed costed
                ? new CostedBook(costed, findings, Exit.DONE)
                : new CostedBook(null, findings, Exit.NO_PLAN);
    }
}
