package perkilo.report.cost;

import java.util.ArrayList;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.model.Settings;
import perkilo.origin.Origin;
import perkilo.report.part.Lines;
import perkilo.report.part.MakingPart;
import perkilo.report.part.QuoteDates;
import perkilo.report.part.RunTitle;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.Sign;

/**
 * Cost detail: one block for each run, with all formulas.
 *
 * @param sheet the sheet
 * @param runs the cells that other sheets refer to, of each complete run, in the order of the runs
 * @param parts those of each run that is not complete
 * @param packFaults how many lines and orders a person has changed to what cannot be ordered
 */
record DetailSheet(ResultSheet sheet, List<RunCells> runs, List<PartCells> parts, Expr packFaults) {

    static final String NAME = "Cost detail";

    /** Shown if a change needs more than is bought. */
    static final String SHORT = "The purchase no longer covers this. Run perkilo cost again.";

    /** The most missing things that a sentence names. */
    static final int NAMED = 12;

    static DetailSheet of(CostOutcome.Costed costed) {
        SheetBuilder sheet = new SheetBuilder(NAME);
        sheet.widths(32, 24, 14, 10, 14, 15, 15, 14, 14, 14, 14, 14, 14, 14, 12, 12)
                .freeze(2, 1)
                .landscape();
        sheet.title(0, NAME);
        sheet.hint(
                1,
                "Every figure is a live formula. Change a number in your sheets, or a number of packs here, and the costs"
                        + " follow. What to buy is not chosen again, and words, dates and new rows need a new run: this line"
                        + " says so then.");
        Lines lines = new Lines(sheet, 3);
        Settings settings = costed.book().settings();
        QuoteDates dates = QuoteDates.write(lines, settings.costingDate(), settings.priceAgeLimitDays());
        lines.skip(1);
        List<RunCells> runs = new ArrayList<>();
        List<PartCells> parts = new ArrayList<>();
        Expr faults = Expr.of(0);
        boolean first = true;
        for (RunAnswer answer : costed.answers()) {
            RunCost cost = answer.cost();
            if (cost == null) {
                parts.add(PartCells.nothing(answer));
                continue;
            }
            if (!first) {
                sheet.pageBreakBefore(lines.next());
            }
            first = false;
            if (answer.isComplete()) {
                RunCells run = block(lines, costed, answer, cost, dates);
                runs.add(run);
                faults = faults.plus(run.items().columns().purchase().faults());
            } else {
                parts.add(part(lines, costed, answer, cost, dates));
            }
            lines.skip(2);
        }
        return new DetailSheet(sheet.build(), runs, parts, faults);
    }

    private static RunCells block(
            Lines lines, CostOutcome.Costed costed, RunAnswer answer, RunCost cost, QuoteDates dates) {
        int first = lines.next();
        lines.skip(1);
        MakingPart making = MakingPart.write(lines, cost.needs());
        lines.sheet().answer(first, Origin.NONE, RunTitle.of(cost.needs(), making, ""));
        lines.skip(1);
        ItemsPart items = items(lines, costed, answer, cost, making, dates);
        return new ResultPart(lines, costed.book().settings(), cost, making, items).write(first);
    }

    /** The block of a run that is not complete: what is known of it, and what is missing. */
    private static PartCells part(
            Lines lines, CostOutcome.Costed costed, RunAnswer answer, RunCost cost, QuoteDates dates) {
        int first = lines.next();
        lines.skip(1);
        lines.sheet()
                .text(
                        lines.next(),
                        SheetBuilder.FIRST_COLUMN,
                        Sign.ATTENTION + " " + answer.lacks(NAMED),
                        Look.ERROR,
                        answer.missing().get(0).origin());
        lines.skip(2);
        MakingPart making = MakingPart.write(lines, cost.needs());
        lines.sheet().answer(first, Origin.NONE, RunTitle.of(cost.needs(), making, ": not complete"));
        lines.skip(1);
        ItemsPart items = items(lines, costed, answer, cost, making, dates);
        return new ResultPart(lines, costed.book().settings(), cost, making, items).writeKnown(answer, first);
    }

    private static ItemsPart items(
            Lines lines,
            CostOutcome.Costed costed,
            RunAnswer answer,
            RunCost cost,
            MakingPart making,
            QuoteDates dates) {
        PurchasePart purchase = PurchasePart.write(lines, costed.market(), cost.purchase(), dates);
        lines.skip(1);
        ItemsPart items = ItemsPart.write(lines, answer, cost, making, purchase);
        lines.skip(1);
        return items;
    }
}
