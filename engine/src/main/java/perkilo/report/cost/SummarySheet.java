package perkilo.report.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.money.CurrencyUnit;
import perkilo.costing.CostOutcome;
import perkilo.costing.Head;
import perkilo.costing.RunNeeds;
import perkilo.costing.UnitDecimals;
import perkilo.origin.Origin;
import perkilo.report.part.Inputs;
import perkilo.report.part.RunTitle;
import perkilo.report.part.Shortage;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/** Cost summary: the answer in a sentence, a row for each run, and two charts. */
final class SummarySheet {

    /** The column of what stays in stock, from zero. */
    private static final int STOCK_LEFT = 9;

    private static final int CHART_ROWS = 19;
    private static final int DECIMALS = 2;

    private final CostOutcome.Costed costed;
    private final List<RunCells> runs;
    private final CurrencyUnit home;
    private final NumberFormat money;
    private final int unitDecimals;
    private final NumberFormat unitMoney;
    private final SheetBuilder sheet = new SheetBuilder("Cost summary");
    private int next;

    private SummarySheet(CostOutcome.Costed costed, List<RunCells> runs) {
        this.costed = costed;
        this.runs = grouped(runs);
        this.home = costed.book().settings().home();
        this.money = NumberFormat.money(home.getCurrencyCode(), DECIMALS);
        this.unitDecimals = UnitDecimals.of(costed.runs(), DECIMALS);
        this.unitMoney = NumberFormat.money(home.getCurrencyCode(), unitDecimals);
    }

    static ResultSheet of(CostOutcome.Costed costed, List<RunCells> runs) {
        return new SummarySheet(costed, runs).write();
    }

    /** The runs of a product one below the other, rising in size: as a chart draws them. */
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
        sheet.widths(30, 10, 9, 12, 13, 13, 13, 13, 13, 13, 13, 13).landscape();
        sheet.text(0, 0, "Cost summary", Look.TITLE);
        sheet.text(1, 0, basis(), Look.HINT);
        next = 3;
        answers();
        next++;
        int table = next;
        runTable();
        next++;
        int headsTable = next;
        headsTable();
        charts(table, headsTable);
        return sheet.build();
    }

    private String basis() {
        return "Prices and rates of " + costed.book().settings().costingDate() + "; amounts in "
                + home.getCurrencyCode() + " unless another currency stands beside them. Stock on hand plays no part.";
    }

    private void answers() {
        int first = next;
        for (RunCells run : runs) {
            sheet.sentence(next++, 0, Look.ANSWER, Origin.NONE, answer(run));
        }
        if (next > first) {
            Shortage.markWords(sheet, first, 0, next - 1);
        }
    }

    private List<ResultSheet.Part> answer(RunCells run) {
        Expr unit = run.unitCost();
        boolean filled = unit != null;
        List<ResultSheet.Part> parts =
                new ArrayList<>(RunTitle.of(run.cost().needs(), run.making(), filled ? " cost " : " costs "));
        parts.add(
                unit == null
                        ? new ResultSheet.Fixed(run.bulkPerKg(), DECIMALS)
                        : new ResultSheet.Fixed(unit, unitDecimals));
        parts.add(new ResultSheet.Words(" " + home + (filled ? " each; " : " per kg; ")));
        parts.add(new ResultSheet.Fixed(run.stockLeft(), 0));
        parts.add(new ResultSheet.Words(" " + home + " of cash stays in stock"));
        parts.add(Shortage.words(run.lowestLeft(), ". ", "bought for this: run perkilo cost again"));
        return parts;
    }

    private void runTable() {
        List<String> heads = new ArrayList<>(List.of(
                "Run",
                "Units",
                "Batches",
                "Bulk made, kg",
                "Raw material per kg",
                "Bulk per kg",
                "Unit cost",
                "Cash per unit",
                "Outlay for items",
                "Stock left",
                "Wasted"));
        for (CurrencyUnit currency : costed.book().settings().reportCurrencies()) {
            heads.add("Unit cost in " + currency.getCurrencyCode());
        }
        for (int column = 0; column < heads.size(); column++) {
            sheet.text(next, column, heads.get(column), Look.HEADER);
        }
        next++;
        int first = next;
        for (RunCells run : runs) {
            runRow(next++, run);
        }
        if (next > first) {
            Shortage.markBelowZero(sheet, first, STOCK_LEFT, next - 1);
        }
    }

    private void runRow(int row, RunCells run) {
        sheet.text(
                row,
                0,
                run.cost().needs().name(),
                Look.LABEL,
                new Origin("", DetailSheet.NAME, SheetNames.cell(run.row(), 0)));
        Expr units = run.making().units();
        if (units != null) {
            sheet.value(row, 1, units, NumberFormat.WHOLE, Look.PLAIN);
        }
        sheet.value(row, 2, run.making().batches(), NumberFormat.WHOLE, Look.PLAIN);
        sheet.value(row, 3, run.making().output(), new NumberFormat("#,##0.00"), Look.PLAIN);
        sheet.value(row, 4, run.rawMaterialPerKg(), money, Look.PLAIN);
        sheet.value(row, 5, run.bulkPerKg(), money, Look.PLAIN);
        Expr unitCost = run.unitCost();
        if (unitCost != null) {
            sheet.value(row, 6, unitCost, unitMoney, Look.KEY);
            sheet.value(row, 7, Objects.requireNonNull(run.cashPerUnit()), unitMoney, Look.PLAIN);
        }
        sheet.value(row, 8, run.outlay(), money, Look.PLAIN);
        sheet.value(row, STOCK_LEFT, run.stockLeft(), money, Look.PLAIN);
        sheet.value(row, 10, run.wasted(), money, Look.PLAIN);
        int column = 11;
        for (CurrencyUnit currency : costed.book().settings().reportCurrencies()) {
            sheet.width(column, 13);
            if (unitCost != null) {
                Expr rate = Inputs.rate(costed.market().conversion(home, currency));
                sheet.value(
                        row,
                        column,
                        unitCost.times(rate),
                        NumberFormat.money(currency.getCurrencyCode(), unitDecimals),
                        Look.PLAIN);
            }
            column++;
        }
    }

    private void headsTable() {
        sheet.text(next, 0, "What a unit costs, by head", Look.SECTION);
        next++;
        sheet.text(next, 0, "Run", Look.HEADER);
        int column = 1;
        for (Head head : Head.values()) {
            sheet.text(next, column++, head.words(), Look.HEADER);
        }
        sheet.text(next, column, "total", Look.HEADER);
        next++;
        for (RunCells run : runs) {
            Expr units = run.making().units();
            Expr per = units == null ? run.making().output() : units;
            sheet.sentence(
                    next,
                    0,
                    Look.LABEL,
                    Origin.NONE,
                    RunTitle.of(run.cost().needs(), run.making(), units == null ? " (per kg)" : ""));
            column = 1;
            for (Head head : Head.values()) {
                sheet.value(
                        next,
                        column++,
                        Objects.requireNonNull(run.heads().get(head)).over(per),
                        unitMoney,
                        Look.PLAIN);
            }
            sheet.value(next, column, run.total().over(per), unitMoney, Look.TOTAL);
            next++;
        }
    }

    private void charts(int table, int headsTable) {
        int top = next + 1;
        List<Chart.Series> bySize = new ArrayList<>();
        rowsByProduct(table + 1)
                .forEach((name, rows) -> bySize.add(new Chart.Series(
                        name,
                        sheet.range(rows.get(0), 1, rows.get(rows.size() - 1), 1),
                        sheet.range(rows.get(0), 6, rows.get(rows.size() - 1), 6))));
        int left = 0;
        if (!bySize.isEmpty()) {
            sheet.chart(new Chart(
                    Chart.Kind.SCATTER_WITH_LINES,
                    "Cost per unit against run size",
                    "Units in a run (logarithmic)",
                    home + " per unit",
                    new NumberFormat("0.00"),
                    true,
                    bySize,
                    top,
                    left,
                    top + CHART_ROWS,
                    4));
            left = 5;
        }
        int first = headsTable + 2;
        int last = first + runs.size() - 1;
        List<Chart.Series> byHead = new ArrayList<>();
        int column = 1;
        for (Head head : Head.values()) {
            byHead.add(new Chart.Series(
                    head.words(), sheet.range(first, 0, last, 0), sheet.range(first, column, last, column)));
            column++;
        }
        sheet.chart(new Chart(
                Chart.Kind.STACKED_COLUMNS,
                "What a unit costs, by head",
                "Run",
                home + " per unit",
                new NumberFormat("0.00"),
                false,
                byHead,
                top,
                left,
                top + CHART_ROWS,
                left + 7));
    }

    /** The rows of each product in the table: they stand together, rising in size. */
    private Map<String, List<Integer>> rowsByProduct(int first) {
        Map<String, List<Integer>> rows = new LinkedHashMap<>();
        for (int i = 0; i < runs.size(); i++) {
            if (runs.get(i).unitCost() != null) {
                rows.computeIfAbsent(runs.get(i).cost().needs().name(), name -> new ArrayList<>())
                        .add(first + i);
            }
        }
        return rows;
    }
}
