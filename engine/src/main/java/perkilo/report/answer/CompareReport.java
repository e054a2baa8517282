package perkilo.report.answer;

import java.util.ArrayList;
import java.util.List;
import perkilo.decision.PlanAndActual;
import perkilo.decision.Variances;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.report.cost.MessagesSheet;
import perkilo.report.cost.WhatWasRead;
import perkilo.report.decision.ActualSheet;
import perkilo.report.decision.VarianceSheet;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;

/** The sheets that say why costs changed. */
public final class CompareReport {

    private CompareReport() {}

    /**
     * The sheets.
     *
     * @param home code of the home currency
     * @param from what before is, in words
     * @param to what after is, in words
     * @param actuals what each run really took; none where two costings are compared
     * @param findings all findings, those of the reader included
     */
    public static Report of(
            String home,
            String from,
            String to,
            Variances variances,
            List<PlanAndActual> actuals,
            Account account,
            List<Finding> findings) {
        List<ResultSheet> sheets = new ArrayList<>(List.of(VarianceSheet.of(home, from, to, variances)));
        if (!actuals.isEmpty()) {
            sheets.add(ActualSheet.of(home, actuals));
        }
        WhatWasRead.add(sheets, account);
        Report.Said said = new Report.Said("compare", findings);
        sheets.add(MessagesSheet.of(said));
        return new Report(sheets, said);
    }
}
