package perkilo.report.swap;

import java.util.ArrayList;
import java.util.List;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.next.NextSteps;
import perkilo.swaps.next.TrialCost;

/** The sheet What a trial costs. */
final class TrialCostSheet {

    private static final int WIDE = 100;

    private static final int RUNS_ON_A_PAGE = 2;

    private TrialCostSheet() {}

    static ResultSheet of(SwapOutcome.Found found, NextSteps next) {
        SheetBuilder sheet = new SheetBuilder("What a trial costs").landscape();
        Page page = new Page(sheet);
        page.title(
                "What a trial costs",
                WIDE,
                "For a bench batch of " + BenchSheet.grams(next.benchGrams())
                        + ": the cheapest purchase of each new material"
                        + " alone, with freight, charges and duty, and the tests of Settings. Units to pay back: cost of the"
                        + " trial divided by the saving per unit (bulk: per kg), rounded up. Savings are fixed values from"
                        + " full purchase plans.");
        page.paragraph(
                WIDE,
                "Suppliers often send a sample at no charge; then the materials cost nothing. Which tests are needed is for a"
                        + " qualified safety assessor to say.",
                Look.HINT);
        TrialCostTable table = new TrialCostTable(found, next);
        if (table.left() > 0) {
            page.line(
                    "Shown are the best swaps and all blends; %d more swaps are in the answer of --json."
                            .formatted(table.left()),
                    Look.HINT);
        }
        page.line("≥: a part of the cost is not known, so it takes more than this.", Look.HINT);
        page.skip(1);
        Placed<TrialCost> placed = page.table(table.at(sheet, page.next())).filter();
        List<Column<TrialCost>> breaks = new ArrayList<>();
        for (int run = 0; run < table.firstOfRuns().size(); run += RUNS_ON_A_PAGE) {
            breaks.add(table.firstOfRuns().get(run));
        }
        placed.pages(table.changes(), table.last, breaks);
        return sheet.build();
    }
}
