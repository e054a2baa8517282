package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import perkilo.origin.Finding;
import perkilo.xlsx.write.Written;

/**
 * What costing a portfolio came to.
 *
 * @param <T> what the caller keeps of each book's costs
 */
public sealed interface PortfolioAnswer<T> {

    /**
     * Every book was looked at, and the summary is written.
     *
     * @param books in the order that they were named in, those that could not be costed included
     * @param shared what is said of the files that all books use
     * @param summary the workbook that sets the books side by side
     */
    record Done<T>(List<CostedBook<T>> books, List<Finding> shared, Written summary) implements PortfolioAnswer<T> {

        public Done {
            books = List.copyOf(books);
            shared = List.copyOf(shared);
        }
    }

    /** The files that all books share have errors, so nothing was written; at least one finding is one. */
    record BadInput<T>(List<Finding> findings) implements PortfolioAnswer<T> {

        public BadInput {
            findings = List.copyOf(findings);
        }
    }

    /** The destination is no folder, so nothing was done. */
    record NoFolder<T>(Path out) implements PortfolioAnswer<T> {}

    /** The results of two books would go to one place, so nothing was done. */
    record SamePlace<T>(Path one, Path other, Path target) implements PortfolioAnswer<T> {}
}
