package perkilo.report.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import perkilo.model.OwnColumn;
import perkilo.origin.Finding;
import perkilo.report.cost.MessagesSheet;
import perkilo.report.cost.WhatWasRead;
import perkilo.sheet.ContentSum;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.next.BenchBatch;
import perkilo.swaps.next.NextSteps;

/** The report on cheaper materials that could do the same job. */
public final class SwapReport {

    private static final String BETWEEN = " ";

    private SwapReport() {}

    /**
     * A formula with a swap or a blend, as its sheet shows it.
     *
     * @param swap the formula
     * @param columns of the person's own sheet of the original formula that go along
     */
    public record Applied(AppliedSwap swap, List<OwnColumn> columns) {

        public Applied {
            columns = List.copyOf(columns);
        }
    }

    /** Headings that the sheet of a new formula has beside those that every formula has. */
    public static Set<String> writtenColumns() {
        return Set.of(AppliedFormulaSheet.CHANGED);
    }

    /**
     * The sheets for swaps.
     *
     * @param found what was found
     * @param next what a formulator asks for then
     * @param findings everything that a person should know, including findings of the reading
     */
    public static Report of(SwapOutcome.Found found, NextSteps next, List<Finding> findings) {
        return of(found, next, findings, Optional.empty());
    }

    /**
     * The sheets for swaps, and a formula with one of them applied: that sheet belongs to the person from now on. It
     * takes the place of a sheet with the same name that an earlier run wrote and nobody has changed.
     *
     * @param applied named by {@link AppliedSwap}
     */
    public static Report of(
            SwapOutcome.Found found, NextSteps next, List<Finding> findings, Optional<Applied> applied) {
        Report.Said said = new Report.Said("swap", findings);
        List<ResultSheet> sheets = new ArrayList<>(sheets(found, next, applied.map(Applied::swap), said));
        if (applied.isEmpty()) {
            return new Report(sheets, said);
        }
        AppliedSwap swap = applied.get().swap();
        ResultSheet formula = AppliedFormulaSheet.of(swap, applied.get().columns());
        sheets.add(formula);
        Set<String> name = Set.of(formula.name());
        return new Report(sheets, name, name, Map.of(formula.name(), record(swap.identity(), formula)), said);
    }

    /** What is recorded of the sheet of a new formula: which change it holds, and what is in it. */
    private static String record(String identity, ResultSheet sheet) {
        return ContentSum.of(identity) + BETWEEN + ContentSum.of(sheet);
    }

    /**
     * What the record of a sheet says.
     *
     * @param record of a sheet that an earlier run wrote
     * @param identity of a change
     * @return the sum over what was in the sheet; empty if it holds another change
     */
    public static Optional<String> contentOf(String record, String identity) {
        String begin = ContentSum.of(identity) + BETWEEN;
        return record.startsWith(begin) ? Optional.of(record.substring(begin.length())) : Optional.empty();
    }

    private static List<ResultSheet> sheets(
            SwapOutcome.Found found, NextSteps next, Optional<AppliedSwap> applied, Report.Said said) {
        List<ResultSheet> sheets = new ArrayList<>(List.of(SwapsSheet.of(found), BlendSheet.of(found)));
        for (BenchBatch batch : next.benches()) {
            sheets.add(BenchSheet.of(batch));
        }
        if (!next.trials().isEmpty()) {
            sheets.add(TrialCostSheet.of(found, next));
        }
        sheets.add(SameSwapSheet.of(found, next));
        sheets.add(LabelSheet.of(found, applied));
        if (!next.emollients().entries().isEmpty()) {
            sheets.add(EmollientSheet.of(found, next.emollients()));
        }
        WhatWasRead.add(sheets, found.book().account());
        sheets.add(MessagesSheet.of(said));
        return sheets;
    }
}
