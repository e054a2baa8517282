package perkilo.report.swap;

import java.util.List;
import perkilo.origin.Decimals;
import perkilo.sheet.Chart;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Placed;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.next.EmollientComparison;

/** The sheet Emollients compared: all emollients of the book by cost, with what is known of them, and one chart. */
final class EmollientSheet {

    private static final int WIDE = 150;

    /** So many bars can be read on a printed page. */
    private static final int MOST_BARS = 40;

    /** Rows of the sheet for title, axes and legend of the chart. */
    private static final int AROUND_BARS = 7;

    private final SwapOutcome.Found found;
    private final EmollientComparison comparison;
    private final SheetBuilder sheet = new SheetBuilder("Emollients compared");
    private final Page page = new Page(sheet);

    private EmollientSheet(SwapOutcome.Found found, EmollientComparison comparison) {
        this.found = found;
        this.comparison = comparison;
    }

    static ResultSheet of(SwapOutcome.Found found, EmollientComparison comparison) {
        return new EmollientSheet(found, comparison).write();
    }

    private ResultSheet write() {
        sheet.landscape();
        page.title(
                "Emollients compared",
                WIDE,
                "What a kilogram costs if as much as the line below needs is bought of each emollient, alone, with freight,"
                        + " charges, duty and the smallest order: fixed values from purchase plans. Saving: what a kilogram"
                        + " costs less than the material of that line. Facts are linked to the materials sheet. The cheapest"
                        + " for the largest run stand first.");
        for (int run = 0; run < comparison.runs().size(); run++) {
            EmollientComparison.OfRun one = comparison.runs().get(run);
            page.line(
                    "Run %d: %s; %s kg in place of %s"
                            .formatted(
                                    run + 1,
                                    one.run().needs().title(),
                                    Decimals.readable(one.kilograms(), 3),
                                    one.line().material().name()),
                    Look.HINT);
        }
        page.skip(1);
        EmollientTable table = new EmollientTable(found, comparison);
        int bars = Math.min(MOST_BARS, comparison.entries().size());
        int top = page.next();
        page.skip(bars + AROUND_BARS + 1);
        sheet.pageBreakBefore(page.next());
        Placed<EmollientComparison.Entry> placed =
                page.table(table.at(sheet, page.next())).filter();
        placed.pages(table.material, table.lastPrinted(), List.of(table.firstCost));
        chart(table, placed, top, bars);
        if (!comparison.notBought().isEmpty()) {
            page.skip(1);
            page.paragraph(
                    WIDE,
                    "Without an offer, so not compared: " + String.join(", ", comparison.notBought()) + ".",
                    Look.HINT);
        }
        return sheet.build();
    }

    private void chart(EmollientTable table, Placed<EmollientComparison.Entry> placed, int top, int bars) {
        List<Chart.Series> series = table.series(placed, bars);
        String run = comparison.runs().get(comparison.largest()).run().needs().title();
        String which =
                bars < comparison.entries().size() ? "the %d cheapest emollients".formatted(bars) : "all emollients";
        sheet.chart(new Chart(
                Chart.Kind.STACKED_BARS,
                "Cost per kg of " + which + " and how they spread, for " + run,
                new Chart.Axes("", found.book().settings().home() + " per kg", new NumberFormat("0"), false),
                series,
                new Chart.Place(top, 0, top + bars + AROUND_BARS, placed.column(table.lastFact))));
    }
}
