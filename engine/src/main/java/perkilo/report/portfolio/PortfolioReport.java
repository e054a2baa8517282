package perkilo.report.portfolio;

import java.util.List;
import perkilo.report.Report;

/** The sheets that set the costs of many books side by side. */
public final class PortfolioReport {

    private PortfolioReport() {}

    /**
     * The sheets for a portfolio.
     *
     * @param books in the order that they are shown in, those that could not be costed included
     */
    public static Report of(List<PortfolioBook> books) {
        PortfolioMessages messages = PortfolioMessages.of(books);
        return new Report(List.of(new PortfolioSheet(books, messages).write(), messages.sheet()));
    }
}
