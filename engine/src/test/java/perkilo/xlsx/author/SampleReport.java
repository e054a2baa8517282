package perkilo.xlsx.author;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet.Condition;
import perkilo.sheet.SheetBuilder;

/** A report about {@link SampleBook} with everything that a result sheet can hold. */
public final class SampleReport {

    public static final String SUMMARY = "Cost summary";
    public static final String DETAIL = "Cost detail";

    private static final NumberFormat EUR = NumberFormat.money("EUR", 2);
    private static final NumberFormat FINE = NumberFormat.money("EUR", 4);
    private static final int[] UNITS = {500, 1000, 2500, 5000, 10_000};
    private static final String[] NEEDED = {"40", "18.5", "22", "3.2"};
    private static final int[] PACKS = {2, 1, 1, 1};

    private final List<Expr> goods = new ArrayList<>();

    private SampleReport() {}

    public static Report build() {
        SampleReport sample = new SampleReport();
        SheetBuilder detail = sample.detail();
        SheetBuilder summary = sample.summary();
        return new Report(List.of(summary.build(), detail.build()));
    }

    private SheetBuilder detail() {
        SheetBuilder sheet = new SheetBuilder(DETAIL).widths(24, 18, 12, 12, 10, 14, 12, 30);
        sheet.text(0, 0, "Cost detail", Look.TITLE);
        sheet.text(1, 0, "Change the packs in the yellow cells to see what another purchase would cost.", Look.HINT);
        String[] heads = {
            "Material", "Supplier", "Needed kg", "Pack size kg", "Packs bought", "Landed cost", "Left over kg", "Remark"
        };
        for (int column = 0; column < heads.length; column++) {
            sheet.text(3, column, heads[column], Look.HEADER);
        }
        for (int item = 0; item < PACKS.length; item++) {
            detailRow(sheet, 4 + item, item);
        }
        sheet.text(8, 0, "Total", Look.TOTAL);
        goods.add(sheet.value(8, 5, sheet.sumOfColumn(5, 4, 7), EUR, Look.TOTAL));
        return sheet.freeze(4, 1)
                .filter(3, 0, 7, 7)
                .landscape()
                .highlight(4, 6, 7, 6, Condition.ABOVE_ZERO, Look.WARNING)
                .highlight(4, 5, 7, 5, Condition.LOWEST_OF_RANGE, Look.KEY);
    }

    private void detailRow(SheetBuilder sheet, int row, int item) {
        Object[] offer = SampleBook.offers().get(item + 1);
        int line = item + 2;
        sheet.text(row, 0, String.valueOf(offer[1]), Look.LABEL, at("B" + line));
        sheet.text(row, 1, String.valueOf(offer[0]), Look.PLAIN);
        Expr needed = sheet.value(row, 2, Expr.of(new BigDecimal(NEEDED[item])), NumberFormat.QUANTITY, Look.PLAIN);
        Expr size = sheet.value(row, 3, typed(offer[2], "C" + line), NumberFormat.QUANTITY, Look.PLAIN);
        Expr packs = sheet.value(row, 4, Expr.of(PACKS[item]), NumberFormat.WHOLE, Look.CHOICE);
        Expr duty = Expr.of(1).plus(typedPercent(offer[4], "E" + line));
        sheet.value(row, 5, packs.times(size).times(typed(offer[3], "D" + line)).times(duty), EUR, Look.PLAIN);
        sheet.value(row, 6, packs.times(size).minus(needed), NumberFormat.QUANTITY, Look.PLAIN);
        sheet.text(
                row,
                7,
                item == 0
                        ? "=not a formula"
                        : "The cheapest offer that covers what is needed, freight and duty included",
                Look.PLAIN);
    }

    private SheetBuilder summary() {
        SheetBuilder sheet = new SheetBuilder(SUMMARY).widths(14, 14, 14, 14, 14, 14, 14);
        sheet.text(0, 0, "Cost summary", Look.TITLE);
        sheet.text(1, 0, "1,000 jars of day cream cost 1.21 EUR each; the materials cost 523.53 EUR.", Look.ANSWER);
        sheet.text(3, 0, "By run", Look.SECTION);
        String[] heads = {
            "Units", "Raw materials", "Packaging", "Labour", "Set-up", "Cost per unit", "Margin at 1.50 EUR"
        };
        for (int column = 0; column < heads.length; column++) {
            sheet.text(4, column, heads[column], Look.HEADER);
        }
        for (int run = 0; run < UNITS.length; run++) {
            summaryRow(sheet, 5 + run, UNITS[run]);
        }
        sheet.highlight(5, 6, 9, 6, Condition.BELOW_ZERO, Look.ERROR)
                .highlight(5, 5, 9, 5, Condition.LOWEST_OF_RANGE, Look.KEY);
        sheet.text(11, 0, "One price is older than 180 days.", Look.WARNING, new Origin("", DETAIL, "A5"));
        sheet.text(12, 0, "A row was left out.", Look.ERROR, new Origin("other.csv", "", "line 4"));
        return sheet.chart(curve(sheet)).chart(heads(sheet)).freeze(5, 0);
    }

    private void summaryRow(SheetBuilder sheet, int row, int units) {
        Expr run = sheet.value(row, 0, Expr.of(units), NumberFormat.WHOLE, Look.LABEL);
        Expr raw = sheet.value(row, 1, goods.get(0).over(Expr.of(1000)), FINE, Look.PLAIN);
        Expr jar = sheet.value(row, 2, Expr.of(new BigDecimal("0.42")), FINE, Look.PLAIN);
        Expr work = sheet.value(row, 3, Expr.of(new BigDecimal("0.115")), FINE, Look.PLAIN);
        Expr setUp = sheet.value(row, 4, Expr.of(310).over(run), FINE, Look.PLAIN);
        Expr total = sheet.value(row, 5, Expr.sum(List.of(raw, jar, work, setUp)), FINE, Look.TOTAL);
        sheet.value(row, 6, Expr.of(new BigDecimal("1.5")).minus(total), FINE, Look.PLAIN);
    }

    private static Chart curve(SheetBuilder sheet) {
        return new Chart(
                Chart.Kind.SCATTER_WITH_LINES,
                "Cost per unit by run size",
                new Chart.Axes("Units (logarithmic)", "EUR per unit", NumberFormat.money("EUR", 2), true),
                List.of(
                        new Chart.Series("Cost per unit", sheet.range(5, 0, 9, 0), sheet.range(5, 5, 9, 5)),
                        new Chart.Series("Raw materials", sheet.range(5, 0, 9, 0), sheet.range(5, 1, 9, 1))),
                new Chart.Place(14, 0, 30, 2));
    }

    private static Chart heads(SheetBuilder sheet) {
        String[] names = {"Raw materials", "Packaging", "Labour", "Set-up"};
        List<Chart.Series> series = new ArrayList<>();
        for (int i = 0; i < names.length; i++) {
            series.add(new Chart.Series(names[i], sheet.range(5, 0, 9, 0), sheet.range(5, i + 1, 9, i + 1)));
        }
        return new Chart(
                Chart.Kind.STACKED_COLUMNS,
                "What a unit costs",
                new Chart.Axes("Units in the run", "EUR per unit", NumberFormat.money("EUR", 2), false),
                series,
                new Chart.Place(14, 3, 30, 6));
    }

    private static Expr typed(Object number, String cell) {
        return Expr.input(new Figure(new BigDecimal(String.valueOf(number)), at(cell), BigDecimal.ONE));
    }

    private static Expr typedPercent(Object number, String cell) {
        BigDecimal fraction = new BigDecimal(String.valueOf(number)).movePointLeft(2);
        return Expr.input(new Figure(fraction, at(cell), new BigDecimal("0.01")));
    }

    private static Origin at(String cell) {
        return new Origin(SampleBook.FILE, "Offers", cell);
    }
}
