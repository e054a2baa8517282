package perkilo.report.decision;

import java.util.ArrayList;
import java.util.List;
import perkilo.decision.ScenarioCosts;
import perkilo.sheet.Chart;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Placed;

/** Scenarios compared: the cost of a unit in each scenario beside today's, in one table and a chart. */
public final class ScenarioSheet {

    private static final String NAME = "Scenarios compared";
    private static final int FIRST = 3;
    private static final int CHART_ROWS = 15;
    private static final int CHART_COLUMNS = 5;

    private ScenarioSheet() {}

    /**
     * The sheet.
     *
     * @param costs at least one scenario
     * @param home code of the home currency
     * @param figures the cells of today's runs
     */
    public static ResultSheet of(ScenarioCosts costs, String home, List<RunFigures> figures) {
        SheetBuilder sheet = new SheetBuilder(NAME).landscape();
        sheet.title(0, NAME);
        sheet.hint(
                1,
                "The cost of one unit (of one kilogram where nothing is filled). Each scenario has purchase plans of its own; its"
                        + " figures are values of this run. Today is live.");
        int next = FIRST;
        for (ScenarioCosts.Costed scenario : costs.scenarios()) {
            sheet.hint(
                    next++,
                    DecisionMessages.scenario(
                            scenario.scenario().name(), scenario.scenario().changes()));
        }
        ScenarioTable columns = new ScenarioTable(costs, home);
        Placed<ScenarioTable.Run> rows =
                columns.onSheet().at(sheet, next + 1, columns.rows(figures)).write();
        Chart.Range runs = rows.range(columns.run);
        List<Chart.Series> series = new ArrayList<>();
        series.add(new Chart.Series("Today", runs, rows.range(columns.today)));
        columns.each.forEach(one -> series.add(new Chart.Series(one.heading(), runs, rows.range(one))));
        int top = rows.next() + 1;
        int left = SheetBuilder.FIRST_COLUMN;
        sheet.chart(new Chart(
                Chart.Kind.LINES,
                "Cost of a unit today and in each scenario",
                new Chart.Axes("Run", home, new NumberFormat("0.00"), false),
                series,
                new Chart.Place(top, left, top + CHART_ROWS, left + CHART_COLUMNS - 1)));
        return sheet.build();
    }
}
