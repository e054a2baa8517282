package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.report.portfolio.PortfolioBook;

/**
 * The outcome for one book of a portfolio.
 *
 * @param file the book
 * @param shown the book as the summary shows it, with the findings about this book only
 * @param findings everything that a person should know, also about shared files
 * @param view what the caller keeps of its costs; null if it was not costed
 * @param backup the copy of a file that the result replaced; null if there was nothing to keep
 * @param isFaulty whether it was not costed because of a fault in the program
 */
public record CostedBook<T>(
        Path file,
        PortfolioBook shown,
        List<Finding> findings,
        @Nullable T view,
        @Nullable Path backup,
        boolean isFaulty) {

    public CostedBook {
        findings = SameCause.once(findings);
    }

    /** Whether it has costs. */
    public boolean isCosted() {
        return view != null;
    }

    /** Whether every run of it is complete and nothing has an error. */
    public boolean isComplete() {
        PortfolioBook.Costs costs = shown.costs();
        return (costs == null || costs.incomplete().isEmpty())
                && findings.stream().noneMatch(Finding::isError);
    }

    /** The same book without findings that are shown elsewhere; {@code findings} keeps them. */
    CostedBook<T> without(Set<Finding> others) {
        return new CostedBook<>(file, shown.without(others), findings, view, backup, isFaulty);
    }
}
