package perkilo.report.answer;

import java.util.ArrayList;
import java.util.List;
import perkilo.decision.TargetCost;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.report.cost.MessagesSheet;
import perkilo.report.cost.WhatWasRead;
import perkilo.report.decision.TargetSheet;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;

/** The sheets with the target costs. */
public final class TargetReport {

    private TargetReport() {}

    /**
     * The sheets.
     *
     * @param home code of the home currency
     * @param findings all findings, those of the reader included
     */
    public static Report of(String home, List<TargetCost> targets, Account account, List<Finding> findings) {
        List<ResultSheet> sheets = new ArrayList<>(List.of(TargetSheet.of(home, targets)));
        WhatWasRead.add(sheets, account);
        Report.Said said = new Report.Said("target", findings);
        sheets.add(MessagesSheet.of(said));
        return new Report(sheets, said);
    }
}
