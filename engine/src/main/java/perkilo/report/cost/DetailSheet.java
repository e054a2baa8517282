package perkilo.report.cost;

import java.util.ArrayList;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunCost;
import perkilo.model.Settings;
import perkilo.origin.Origin;
import perkilo.report.part.Lines;
import perkilo.report.part.MakingPart;
import perkilo.report.part.QuoteDates;
import perkilo.report.part.RunTitle;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/**
 * Cost detail: one block for each run, with all formulas.
 *
 * @param sheet the sheet
 * @param runs the cells that other sheets refer to, in the order of the runs
 */
record DetailSheet(ResultSheet sheet, List<RunCells> runs) {

    static final String NAME = "Cost detail";

    /** Shown if a change needs more than is bought. */
    static final String SHORT = "The purchase no longer covers this. Run perkilo cost again.";

    static DetailSheet of(CostOutcome.Costed costed) {
        SheetBuilder sheet = new SheetBuilder(NAME);
        sheet.widths(32, 24, 14, 10, 14, 15, 15, 14, 14, 14, 14, 14, 14, 14, 12, 12)
                .freeze(2, 1)
                .landscape();
        sheet.title(0, NAME);
        sheet.hint(
                1,
                "Every figure is a live formula. Change a price, a rate, a percentage or a number of packs and the costs follow."
                        + " Only the choice of what to buy does not change.");
        Lines lines = new Lines(sheet, 3);
        Settings settings = costed.book().settings();
        QuoteDates dates = QuoteDates.write(lines, settings.costingDate(), settings.priceAgeLimitDays());
        lines.skip(1);
        List<RunCells> runs = new ArrayList<>();
        for (RunCost cost : costed.runs()) {
            if (!runs.isEmpty()) {
                sheet.pageBreakBefore(lines.next());
            }
            runs.add(block(lines, costed, cost, dates));
            lines.skip(2);
        }
        return new DetailSheet(sheet.build(), runs);
    }

    private static RunCells block(Lines lines, CostOutcome.Costed costed, RunCost cost, QuoteDates dates) {
        int first = lines.next();
        lines.skip(1);
        MakingPart making = MakingPart.write(lines, cost.needs());
        lines.sheet().answer(first, Origin.NONE, RunTitle.of(cost.needs(), making, ""));
        lines.skip(1);
        PurchasePart purchase = PurchasePart.write(lines, costed.market(), cost.purchase(), dates);
        lines.skip(1);
        ItemsPart items = ItemsPart.write(lines, cost, making, purchase);
        lines.skip(1);
        return new ResultPart(lines, costed.book().settings(), cost, making, items).write(first);
    }
}
