package perkilo.report.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.CurrencyUnit;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.costing.RunNeeds;
import perkilo.origin.Origin;
import perkilo.report.part.RunTitle;
import perkilo.report.part.Shortage;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/** Cost summary: the answer in a sentence, a row for each run, and two charts. */
final class SummarySheet {

    private static final String NAME = "Cost summary";
    private static final int FIRST_ANSWER = 3;
    private static final int CHART_ROWS = 19;

    /** The number of the sheet's columns under a chart. */
    private static final int CHART_BY_SIZE = 5;

    private static final int CHART_BY_HEAD = 8;
    private static final int DECIMALS = 2;

    /** The most missing things that the answer names. */
    private static final int NAMED = 3;

    private final CostOutcome.Costed costed;
    private final List<RunCells> runs;
    private final List<PartCells> parts;
    private final CurrencyUnit home;
    private final RunTable columns;
    private final HeadTable heads;
    private final SheetBuilder sheet = new SheetBuilder(NAME);

    private SummarySheet(CostOutcome.Costed costed, DetailSheet detail) {
        this.costed = costed;
        this.runs = grouped(detail.runs());
        this.parts = detail.parts();
        this.home = costed.book().settings().home();
        this.columns = new RunTable(costed, detail.runs());
        this.heads = new HeadTable(detail.runs(), columns.unitMoney(home));
    }

    static ResultSheet of(CostOutcome.Costed costed, DetailSheet detail) {
        return new SummarySheet(costed, detail).write();
    }

    /** The runs grouped by product, each product's runs by rising size, as a chart needs them. */
    private static List<RunCells> grouped(List<RunCells> runs) {
        Map<String, List<RunCells>> byName = new LinkedHashMap<>();
        for (RunCells run : runs) {
            RunNeeds needs = run.cost().needs();
            byName.computeIfAbsent((needs.product() == null ? "bulk " : "") + needs.name(), name -> new ArrayList<>())
                    .add(run);
        }
        List<RunCells> grouped = new ArrayList<>();
        for (List<RunCells> ofName : byName.values()) {
            ofName.sort((one, other) -> size(one).compareTo(size(other)));
            grouped.addAll(ofName);
        }
        return grouped;
    }

    private static BigDecimal size(RunCells run) {
        BigDecimal units = run.cost().needs().units();
        return units == null ? run.cost().needs().batches().charged() : units;
    }

    private ResultSheet write() {
        sheet.landscape();
        sheet.title(0, NAME);
        sheet.hint(1, basis());
        int next = answers();
        if (!parts.isEmpty()) {
            next = incomplete(next + 1);
        }
        if (!runs.isEmpty()) {
            complete(next + 1);
        }
        return sheet.build();
    }

    /** Writes the complete runs and their charts. */
    private void complete(int row) {
        List<RunCost> costs = new ArrayList<>();
        for (RunCells run : runs) {
            costs.add(run.cost());
        }
        Placed<RunCost> table = columns.onSheet().at(sheet, row, costs).write();
        sheet.section(table.next() + 1, "What a unit costs, by head");
        Placed<RunCost> byHead =
                heads.onSheet().at(sheet, table.next() + 2, costs).write();
        charts(table, byHead);
    }

    /** Writes the runs that are not complete; the row after them. */
    private int incomplete(int row) {
        sheet.section(row, "Not complete: no unit cost, no price ladder, not in the charts");
        List<RunAnswer> answers = parts.stream().map(PartCells::answer).toList();
        Table<RunAnswer> table = columns.incomplete(parts).onSheet();
        return table.at(sheet, row + 1, answers).write().next();
    }

    private String basis() {
        return "Prices and rates of " + costed.book().settings().costingDate() + "; amounts in "
                + home.getCurrencyCode() + " unless another currency is named. Stock on hand is not used.";
    }

    /** Writes the answers, and returns the row after them. */
    private int answers() {
        int next = FIRST_ANSWER;
        if (!parts.isEmpty()) {
            sheet.answer(next++, Sign.ATTENTION + " " + costed.headline());
        }
        for (RunCells run : runs) {
            sheet.answer(next++, Origin.NONE, answer(run));
        }
        for (PartCells part : parts) {
            sheet.answer(next++, part.title(), answer(part));
        }
        if (next > FIRST_ANSWER) {
            sheet.markAttention(FIRST_ANSWER, next - 1, Look.ERROR);
        }
        return next;
    }

    private List<ResultSheet.Part> answer(RunCells run) {
        Expr unit = run.unitCost();
        boolean filled = unit != null;
        List<ResultSheet.Part> parts =
                new ArrayList<>(RunTitle.of(run.cost().needs(), run.making(), filled ? " cost " : " costs "));
        parts.add(
                unit == null
                        ? new ResultSheet.Fixed(run.bulk().made(), DECIMALS)
                        : new ResultSheet.Fixed(unit, columns.unitDecimals()));
        parts.add(new ResultSheet.Words(" " + home + (filled ? " each; " : " per kg; ")));
        parts.add(new ResultSheet.Fixed(run.cash().stockLeft(), 0));
        parts.add(new ResultSheet.Words(" " + home + " buys items that this run does not use up"));
        parts.add(Shortage.words(run.lowestLeft(), ". ", DetailSheet.SHORT));
        return parts;
    }

    private List<ResultSheet.Part> answer(PartCells part) {
        List<ResultSheet.Part> words = new ArrayList<>();
        RunAnswer answer = part.answer();
        words.add(new ResultSheet.Words(Sign.ATTENTION + " " + answer.title() + ": " + answer.lacks(NAMED)));
        if (part.knownSoFar() != null) {
            words.add(new ResultSheet.Words(" Known so far: "));
            words.add(new ResultSheet.Fixed(part.knownSoFar(), DECIMALS));
            words.add(new ResultSheet.Words(" " + home + " for the whole run"));
        }
        return words;
    }

    private void charts(Placed<RunCost> table, Placed<RunCost> byHead) {
        int top = byHead.next() + 1;
        List<Chart.Series> bySize = new ArrayList<>();
        rowsByProduct(table)
                .forEach((name, rows) -> bySize.add(new Chart.Series(
                        name,
                        table.range(columns.units, rows.get(0), rows.get(rows.size() - 1)),
                        table.range(columns.unitCost, rows.get(0), rows.get(rows.size() - 1)))));
        int left = SheetBuilder.FIRST_COLUMN;
        if (!bySize.isEmpty()) {
            sheet.chart(new Chart(
                    Chart.Kind.SCATTER_WITH_LINES,
                    "Cost per unit against run size",
                    new Chart.Axes("Units in a run (logarithmic)", home + " per unit", new NumberFormat("0.00"), true),
                    bySize,
                    new Chart.Place(top, left, top + CHART_ROWS, left + CHART_BY_SIZE - 1)));
            left += CHART_BY_SIZE;
        }
        List<Chart.Series> parts = new ArrayList<>();
        for (Column<RunCost> head : heads.byHead()) {
            parts.add(new Chart.Series(head.heading(), byHead.range(heads.run), byHead.range(head)));
        }
        sheet.chart(new Chart(
                Chart.Kind.STACKED_COLUMNS,
                "What a unit costs, by head",
                new Chart.Axes("Run", home + " per unit", new NumberFormat("0.00"), false),
                parts,
                new Chart.Place(top, left, top + CHART_ROWS, left + CHART_BY_HEAD - 1)));
    }

    /** The rows of each product in the table: next to each other, by rising size. */
    private static Map<String, List<Integer>> rowsByProduct(Placed<RunCost> table) {
        Map<String, List<Integer>> rows = new LinkedHashMap<>();
        for (int index = 0; index < table.rows().size(); index++) {
            RunCost cost = table.rows().get(index);
            if (cost.unitCost().isPresent()) {
                rows.computeIfAbsent(cost.needs().name(), name -> new ArrayList<>())
                        .add(index);
            }
        }
        return rows;
    }
}
