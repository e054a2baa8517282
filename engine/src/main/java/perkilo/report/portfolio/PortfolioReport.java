package perkilo.report.portfolio;

import java.util.List;
import perkilo.origin.Finding;
import perkilo.sheet.Report;

/** The sheets that set the costs of many books side by side. */
public final class PortfolioReport {

    private PortfolioReport() {}

    /**
     * The sheets for a portfolio.
     *
     * @param books in the order that they are shown in, those that could not be costed included
     * @param shared what is said of the files that all books use
     */
    public static Report of(List<PortfolioBook> books, List<Finding> shared) {
        PortfolioMessages messages = PortfolioMessages.of(books, shared);
        return new Report(List.of(new PortfolioSheet(books, messages).write(), messages.sheet()));
    }
}
