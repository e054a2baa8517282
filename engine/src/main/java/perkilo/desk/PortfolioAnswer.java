package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.xlsx.write.Written;

/**
 * The outcome of costing a portfolio.
 *
 * @param <T> what the caller keeps of each book's costs
 */
public sealed interface PortfolioAnswer<T> {

    /**
     * Every book was processed, and the summary is written.
     *
     * @param books in the order in which they were named, including those that could not be costed
     * @param shared the findings about files that all books use
     * @param summary the workbook that compares the books
     */
    record Done<T>(List<CostedBook<T>> books, List<Finding> shared, Written summary) implements PortfolioAnswer<T> {

        public Done {
            books = List.copyOf(books);
            shared = SameCause.once(shared);
        }
    }

    /** The files that all books share have errors, so nothing was written; at least one finding is an error. */
    record BadInput<T>(List<Finding> findings) implements PortfolioAnswer<T> {

        public BadInput {
            findings = SameCause.once(findings);
        }
    }

    /** The destination is not a folder, so nothing was done. */
    record NoFolder<T>(Path out) implements PortfolioAnswer<T> {}

    /** The results of two books would go to one place, so nothing was done. */
    record SamePlace<T>(Path one, Path other, Path target) implements PortfolioAnswer<T> {}
}
