package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;
import perkilo.report.portfolio.PortfolioBook;

/**
 * What came of one book of a portfolio.
 *
 * @param file the book
 * @param shown the book as the summary shows it, with what is said of it alone
 * @param findings everything that a person should know, of shared files too
 * @param view what the caller keeps of its costs; null where it was not costed
 * @param backup where what stood in the result's place is kept; null where nothing was worth it
 * @param isFaulty whether a fault of the program kept it from being costed
 */
public record CostedBook<T>(
        Path file,
        PortfolioBook shown,
        List<Finding> findings,
        @Nullable T view,
        @Nullable Path backup,
        boolean isFaulty) {

    public CostedBook {
        findings = List.copyOf(findings);
    }

    /** Whether it has costs. */
    public boolean isCosted() {
        return view != null;
    }

    /** The same, without findings that are said elsewhere; {@code findings} keeps them. */
    CostedBook<T> without(Set<Finding> others) {
        return new CostedBook<>(file, shown.without(others), findings, view, backup, isFaulty);
    }
}
