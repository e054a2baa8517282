package perkilo.report.cost;

import java.util.ArrayList;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.origin.Finding;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;

/** The sheets with the cost of each run. */
public final class CostReport {

    private CostReport() {}

    /**
     * The sheets for costs.
     *
     * @param costed the costs
     * @param findings all findings, those of the reader included
     */
    public static Report of(CostOutcome.Costed costed, List<Finding> findings) {
        DetailSheet detail = DetailSheet.of(costed);
        String home = costed.book().settings().home().getCurrencyCode();
        List<ResultSheet> sheets = new ArrayList<>(List.of(
                SummarySheet.of(costed, detail),
                detail.sheet(),
                LadderSheet.of(home, detail.runs(), costed.incomplete())));
        WhatWasRead.add(sheets, costed.book().account());
        Report.Said said = new Report.Said("cost", findings);
        sheets.add(MessagesSheet.of(said));
        return new Report(sheets, said);
    }
}
