package perkilo.report.cost;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunCost;
import perkilo.model.Settings;
import perkilo.origin.Origin;
import perkilo.purchasing.LineCost;
import perkilo.report.part.MakingPart;
import perkilo.report.part.QuoteDates;
import perkilo.report.part.Rows;
import perkilo.report.part.RunTitle;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/**
 * Cost detail: one block for each run, in which everything is computed.
 *
 * @param sheet the sheet
 * @param runs the cells that other sheets refer to, in the order of the runs
 */
record DetailSheet(ResultSheet sheet, List<RunCells> runs) {

    static final String NAME = "Cost detail";

    static DetailSheet of(CostOutcome.Costed costed) {
        SheetBuilder sheet = new SheetBuilder(NAME);
        sheet.widths(32, 24, 14, 10, 14, 15, 15, 14, 14, 14, 14, 14, 14, 14, 12, 12)
                .freeze(2, 1)
                .landscape();
        sheet.text(0, 0, NAME, Look.TITLE);
        sheet.text(
                1,
                0,
                "Every figure is a live formula. Change a price, a rate, a percentage or a number of packs and the costs follow;"
                        + " only the choice of what to buy stays as it is.",
                Look.HINT);
        Rows rows = new Rows(sheet, 3);
        Settings settings = costed.book().settings();
        QuoteDates dates = QuoteDates.write(rows, settings.costingDate(), settings.priceAgeLimitDays());
        rows.skip(1);
        List<RunCells> runs = new ArrayList<>();
        for (RunCost cost : costed.runs()) {
            if (!runs.isEmpty()) {
                sheet.pageBreakBefore(rows.next());
            }
            runs.add(block(rows, costed, cost, dates));
            rows.skip(2);
        }
        return new DetailSheet(sheet.build(), runs);
    }

    private static RunCells block(Rows rows, CostOutcome.Costed costed, RunCost cost, QuoteDates dates) {
        int first = rows.next();
        rows.skip(1);
        MakingPart making = MakingPart.write(rows, cost.needs());
        rows.sheet().sentence(first, 0, Look.ANSWER, Origin.NONE, RunTitle.of(cost.needs(), making, ""));
        rows.skip(1);
        IdentityHashMap<LineCost, PurchasePart.LineCells> lines =
                new PurchasePart(rows, costed.market(), cost.purchase(), dates).write();
        rows.skip(1);
        ItemsPart items = ItemsPart.write(rows, cost, making, lines);
        rows.skip(1);
        return new ResultPart(rows, costed.book().settings(), cost, making, items).write(first);
    }
}
