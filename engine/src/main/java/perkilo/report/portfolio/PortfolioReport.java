package perkilo.report.portfolio;

import java.util.List;
import perkilo.origin.Finding;
import perkilo.sheet.Report;

/** The sheets that compare the costs of many books. */
public final class PortfolioReport {

    private PortfolioReport() {}

    /**
     * The sheets for a portfolio.
     *
     * @param books in the order of the sheet, those without costs included
     * @param shared findings about files that all books use
     */
    public static Report of(List<PortfolioBook> books, List<Finding> shared) {
        PortfolioMessages messages = PortfolioMessages.of(books, shared);
        return new Report(List.of(new PortfolioSheet(books, messages).write(), messages.sheet()));
    }
}
