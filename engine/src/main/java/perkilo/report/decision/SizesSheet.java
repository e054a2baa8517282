package perkilo.report.decision;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import perkilo.decision.SizeAdvice;
import perkilo.decision.SizeStep;
import perkilo.origin.Decimals;
import perkilo.report.part.Lines;
import perkilo.sheet.Chart;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Placed;

/** Which size: for each product the run sizes from which a unit really costs less, and how large a run may be. */
public final class SizesSheet {

    private static final String NAME = "Which size";
    private static final int CHART_ROWS = 17;

    /** The most falls that a sentence names. */
    private static final int NAMED = 3;

    private static final int CHART_COLUMNS = 5;

    private SizesSheet() {}

    /**
     * The sheet.
     *
     * @param home code of the home currency
     * @param advices of each product with two sizes or more
     */
    public static ResultSheet of(String home, List<SizeAdvice> advices) {
        SheetBuilder sheet = new SheetBuilder(NAME).landscape();
        sheet.title(0, NAME);
        sheet.hint(
                1,
                "Between the smallest and the largest run named, these are the sizes from which a unit costs less than at every"
                        + " smaller one, because other packs, prices or suppliers become the cheapest.");
        sheet.hint(
                2,
                "Every size counts, none is skipped. A fall below 0.5 % is not listed. All figures are values of this run; each"
                        + " size has a purchase plan of its own.");
        Lines lines = new Lines(sheet, 4);
        if (advices.isEmpty()) {
            lines.hint(DecisionMessages.noTwoSizes());
        }
        boolean first = true;
        for (SizeAdvice advice : advices) {
            if (!first) {
                sheet.pageBreakBefore(lines.next());
            }
            first = false;
            block(lines, home, advice);
        }
        return sheet.build();
    }

    private static void block(Lines lines, String home, SizeAdvice advice) {
        SheetBuilder sheet = lines.sheet();
        sheet.section(lines.next(), advice.product().name(), advice.product().origin());
        lines.skip(1);
        sheet.answer(lines.next(), DecisionMessages.steps(advice.steps().size(), largestFalls(advice.steps())));
        lines.skip(1);
        SizeAdvice.Limit limit = advice.limit();
        if (limit == null) {
            String why = advice.unknown() == SizeAdvice.Unknown.NO_YEARLY_UNITS
                    ? DecisionMessages.noYearlyUnits()
                    : DecisionMessages.noShelfLife();
            sheet.text(
                    lines.next(),
                    SheetBuilder.FIRST_COLUMN,
                    why,
                    Look.HINT,
                    advice.product().origin());
        } else {
            boolean over = advice.largest().needs().units() != null
                    && advice.largest().needs().units().longValueExact() > limit.units();
            String words =
                    (over ? Sign.ATTENTION + " " : "") + DecisionMessages.largestSize(limit.units(), limit.material());
            sheet.text(lines.next(), SheetBuilder.FIRST_COLUMN, words, over ? Look.WARNING : Look.PLAIN);
        }
        lines.skip(1);
        if (advice.smaller() > 0) {
            lines.hint(DecisionMessages.smallerSteps(advice.smaller()));
        }
        if (!advice.isExact()) {
            lines.hint(DecisionMessages.notExact());
        }
        SizeTable columns = new SizeTable(home);
        Placed<SizeTable.Size> rows = lines.write(lines.place(columns.onSheet(), SizeTable.rows(advice)));
        int top = lines.next() + 1;
        int left = SheetBuilder.FIRST_COLUMN;
        sheet.chart(new Chart(
                Chart.Kind.SCATTER_WITH_LINES,
                "Unit cost by run size: " + advice.product().name(),
                new Chart.Axes("Units in a run (logarithmic)", home + " per unit", new NumberFormat("0.00"), true),
                List.of(new Chart.Series(
                        advice.product().name(), rows.range(columns.units), rows.range(columns.unitCost))),
                new Chart.Place(top, left, top + CHART_ROWS - 1, left + CHART_COLUMNS - 1)));
        lines.skip(CHART_ROWS + 2);
    }

    private static List<String> largestFalls(List<SizeStep> steps) {
        return steps.stream()
                .sorted(Comparator.comparing(SizeStep::fall).reversed())
                .limit(NAMED)
                .map(step -> Decimals.readable(step.fall().movePointRight(2), 1) + " % from "
                        + Decimals.readable(
                                Objects.requireNonNull(step.at().needs().units()), 0)
                        + " units on")
                .toList();
    }
}
