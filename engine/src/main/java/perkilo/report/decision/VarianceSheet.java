package perkilo.report.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import perkilo.decision.Variance;
import perkilo.decision.Variances;
import perkilo.report.part.Lines;
import perkilo.sheet.Chart;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Placed;

/** Why it changed: the parts of each change in a table, and a waterfall for all runs and for each. */
public final class VarianceSheet {

    private static final String NAME = "Why it changed";
    private static final int CHART_ROWS = 16;
    private static final int CHART_COLUMNS = 7;
    private static final int FINE = 4;
    private static final int MONEY = 2;

    private final String home;
    private final Lines lines;

    private VarianceSheet(String home, Lines lines) {
        this.home = home;
        this.lines = lines;
    }

    /**
     * The sheet.
     *
     * @param home code of the home currency
     * @param from what before is, in words
     * @param to what after is, in words
     */
    public static ResultSheet of(String home, String from, String to, Variances variances) {
        SheetBuilder sheet = new SheetBuilder(NAME).landscape();
        sheet.title(0, NAME);
        sheet.hint(1, DecisionMessages.compared(from, to));
        sheet.hint(
                2,
                "The cost of one unit (of one kilogram where nothing is filled). Replaced in this order: recipe, process, price,"
                        + " exchange rate, charges, purchase choice, one-offs. The parts add up to the change.");
        VarianceSheet writer = new VarianceSheet(home, new Lines(sheet, 4));
        writer.lines.write(writer.lines.place(new VarianceTable(home).onSheet(), variances.runs()));
        for (String title : variances.unmatched()) {
            writer.lines.hint(DecisionMessages.notCompared(title));
        }
        if (variances.runs().size() > 1) {
            Map<Variance.Part, BigDecimal> whole = new EnumMap<>(Variance.Part.class);
            for (Variance.Part part : Variance.Part.values()) {
                whole.put(part, variances.whole(part));
            }
            writer.waterfall(
                    "All runs together",
                    variances.wholeBefore(),
                    whole,
                    variances.wholeAfter(),
                    MONEY,
                    " for all runs");
        }
        for (Variance run : variances.runs()) {
            boolean filled = run.needs().units() != null;
            writer.waterfall(
                    run.title(),
                    run.ofOneBefore(),
                    run.parts(),
                    run.ofOneAfter(),
                    FINE,
                    filled ? " per unit" : " per kg");
        }
        return sheet.build();
    }

    private void waterfall(
            String title,
            BigDecimal before,
            Map<Variance.Part, BigDecimal> parts,
            BigDecimal after,
            int digits,
            String per) {
        SheetBuilder sheet = lines.sheet();
        sheet.pageBreakBefore(lines.next() + 1);
        lines.skip(1);
        lines.section(title);
        VarianceTable.Waterfall columns = new VarianceTable.Waterfall(home, digits);
        Placed<VarianceTable.Step> steps =
                lines.write(lines.place(columns.onSheet(), VarianceTable.steps(before, parts, after)));
        Chart.Range names = steps.range(columns.name);
        int top = lines.next() + 1;
        int left = SheetBuilder.FIRST_COLUMN;
        sheet.chart(new Chart(
                Chart.Kind.STACKED_COLUMNS,
                title,
                new Chart.Axes("", home + per, new NumberFormat("0.00"), false, from(steps)),
                List.of(
                        new Chart.Series("Not drawn", names, steps.range(columns.base), false),
                        new Chart.Series("Cost", names, steps.range(columns.total)),
                        new Chart.Series("More", names, steps.range(columns.more)),
                        new Chart.Series("Less", names, steps.range(columns.less))),
                new Chart.Place(top, left, top + CHART_ROWS - 1, left + CHART_COLUMNS - 1)));
        lines.skip(CHART_ROWS + 2);
    }

    /**
     * Where the axis begins, so that the steps can be seen beside the whole: two times their height below the lowest.
     */
    private static BigDecimal from(Placed<VarianceTable.Step> steps) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal lowest = null;
        BigDecimal highest = BigDecimal.ZERO;
        for (VarianceTable.Step step : steps.rows()) {
            sum = step.isTotal() ? step.amount() : sum.add(step.amount());
            lowest = lowest == null ? sum : lowest.min(sum);
            highest = highest.max(sum);
        }
        BigDecimal low = lowest == null ? BigDecimal.ZERO : lowest;
        BigDecimal begin = low.subtract(highest.subtract(low).multiply(BigDecimal.valueOf(2)));
        return begin.signum() <= 0 ? BigDecimal.ZERO : begin.round(new MathContext(2, RoundingMode.FLOOR));
    }
}
