package perkilo.report.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.model.Formula;
import perkilo.origin.Finding;
import perkilo.report.cost.MessagesSheet;
import perkilo.report.cost.WhatWasRead;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.swaps.SwapOutcome;

/** The report on cheaper materials that could do the same job. */
public final class SwapReport {

    private SwapReport() {}

    /**
     * The sheets for swaps.
     *
     * @param found what was found
     * @param findings everything that a person should know, including findings of the reading
     */
    public static Report of(SwapOutcome.Found found, List<Finding> findings) {
        return of(found, findings, Optional.empty());
    }

    /**
     * The sheets for swaps, and a formula with one of them applied: that sheet belongs to the person from now on.
     *
     * @param applied named by {@link perkilo.swaps.AppliedSwap}
     */
    public static Report of(SwapOutcome.Found found, List<Finding> findings, Optional<Formula> applied) {
        Report.Said said = new Report.Said("swap", findings);
        List<ResultSheet> sheets = new ArrayList<>(sheets(found, said));
        Optional<ResultSheet> formula = applied.map(AppliedFormulaSheet::of);
        formula.ifPresent(sheets::add);
        return new Report(sheets, formula.map(ResultSheet::name).map(Set::of).orElse(Set.of()), said);
    }

    private static List<ResultSheet> sheets(SwapOutcome.Found found, Report.Said said) {
        List<ResultSheet> sheets = new ArrayList<>(
                List.of(SwapsSheet.of(found), BlendSheet.of(found), LabelSheet.of(found), EmollientSheet.of(found)));
        WhatWasRead.add(sheets, found.book().account());
        sheets.add(MessagesSheet.of(said));
        return sheets;
    }
}
