package perkilo.report.swap;

import java.util.ArrayList;
import java.util.List;
import perkilo.sheet.Chart;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;

/**
 * The sheet Swaps: which material could replace which, ranked, with the saving at each run size; below it the materials
 * that are not offered, and why.
 */
final class SwapsSheet {

    static final String NAME = "Swaps";

    private static final int CHART_ROWS = 22;

    /** Letters that fit above the columns that every printed page repeats. */
    private static final int WIDE = 110;

    private final SwapOutcome.Found found;
    private final SheetBuilder sheet = new SheetBuilder(NAME);
    private final Page page = new Page(sheet);

    private SwapsSheet(SwapOutcome.Found found) {
        this.found = found;
    }

    static ResultSheet of(SwapOutcome.Found found) {
        return new SwapsSheet(found).write();
    }

    private ResultSheet write() {
        sheet.landscape();
        page.title(
                NAME,
                WIDE,
                "Ranked by saving times closeness at worst, where every unknown fact counts as far. Amounts are fixed values from full purchase plans, because each plan"
                        + " chooses anew what to buy; changes are formulas over them. All in "
                        + found.book().settings().home() + ", prices of "
                        + found.book().settings().costingDate() + ".");
        page.cautions();
        if (found.swaps().isEmpty()) {
            page.line(found.withoutSwaps(), Look.ANSWER);
        } else {
            swaps();
        }
        page.skip(1);
        page.section("Not offered, and why");
        page.table(new RejectedTable(found).at(sheet, page.next()));
        if (!found.missing().isEmpty()) {
            page.skip(1);
            page.section("A fact is missing: these materials are not ranked");
            page.table(new MissingFactTable(found).at(sheet, page.next()));
        }
        if (!found.kept().isEmpty()) {
            page.skip(1);
            page.section("Lines that are not compared, and why");
            page.table(new KeptLineTable(found).at(sheet, page.next()));
        }
        return sheet.build();
    }

    private void swaps() {
        int chartTop = page.next();
        page.skip(CHART_ROWS + 1);
        SwapTable table = new SwapTable(found);
        Placed<Numbered<Swap>> swaps = page.table(table.at(sheet, page.next())).filter();
        chart(table, swaps, chartTop);
        print(table, swaps);
    }

    /** In print the first run stays beside its swap; each other run has its own pages, with the swapped materials. */
    private static void print(SwapTable table, Placed<Numbered<Swap>> swaps) {
        List<Column<Numbered<Swap>>> begin = new ArrayList<>();
        for (SwapTable.OfRun run : table.runs()) {
            begin.add(run.run);
        }
        Column<Numbered<Swap>> last = table.runs().get(begin.size() - 1).outlayChange;
        swaps.pages(table.candidate, last, begin.subList(1, begin.size()));
    }

    /** Change of unit cost at the first run size against closeness. */
    private void chart(SwapTable table, Placed<Numbered<Swap>> swaps, int top) {
        Chart.Series series = new Chart.Series(
                "change of unit cost, first run size",
                swaps.range(table.closeness),
                swaps.range(table.runs().get(0).unitCostChange));
        sheet.chart(new Chart(
                Chart.Kind.SCATTER,
                "Change of unit cost against closeness",
                new Chart.Axes(
                        "Closeness at worst, of 100",
                        found.book().settings().home() + " per unit; below zero is a saving",
                        new NumberFormat("0.000"),
                        false),
                List.of(series),
                new Chart.Place(top, swaps.column(table.number), top + CHART_ROWS, swaps.column(table.candidate))));
    }
}
