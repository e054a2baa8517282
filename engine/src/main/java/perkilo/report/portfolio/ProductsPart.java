package perkilo.report.portfolio;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.costing.Head;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** Every product at its largest run: unit cost by head, payments for items, and charts of both. */
final class ProductsPart {

    private static final int CHART_ROWS = 20;

    /** The most products that leave room for the charts on their page. */
    private static final int LINES_ABOVE_CHARTS = 16;

    /** The most columns that a reader can distinguish. */
    private static final int MOST_IN_CHART = 30;

    private static final int WIDTH = 15;

    /** The number of the sheet's columns under a chart. */
    private static final int CHART_COLUMNS = 7;

    private final SheetBuilder sheet;
    private final String home;
    private final NumberFormat money;
    private final List<Column<Line>> byHead = new ArrayList<>();
    private final Column<Line> product;
    private final Column<Line> used;
    private final Column<Line> left;
    private final List<Line> lines = new ArrayList<>();

    /** A product of a book at its largest run. */
    private record Line(String book, PortfolioRun run) {}

    ProductsPart(SheetBuilder sheet, String home, List<PortfolioBook> books) {
        this.sheet = sheet;
        this.home = home;
        this.money = NumberFormat.money(home, 2);
        for (PortfolioBook book : books) {
            Map<String, PortfolioRun> largest = new LinkedHashMap<>();
            for (PortfolioRun run : requireNonNull(book.costs()).runs()) {
                largest.merge(
                        (run.units() == null) + run.product(),
                        run,
                        (one, other) -> other.size().compareTo(one.size()) > 0 ? other : one);
            }
            largest.values().forEach(run -> lines.add(new Line(book.name(), run)));
        }
        Map<String, Integer> named = new HashMap<>();
        lines.forEach(line -> named.merge(line.run().product(), 1, Integer::sum));
        product = Column.<Line>of("product", "Product")
                .words(line -> name(line, requireNonNull(named.get(line.run().product()))))
                .look(Look.LABEL);
        for (Head head : Head.values()) {
            byHead.add(PortfolioColumns.<Line>amount(
                            head.name(),
                            head.words(),
                            money,
                            line -> line.run().heads().getOrDefault(head, BigDecimal.ZERO))
                    .width(WIDTH));
        }
        used = PortfolioColumns.<Line>amount(
                        "used",
                        "items used or wasted",
                        money,
                        line -> line.run().outlay().subtract(line.run().stockLeft()))
                .width(WIDTH);
        left = PortfolioColumns.<Line>amount(
                        "stockLeft",
                        "items left in stock",
                        money,
                        line -> line.run().stockLeft())
                .width(WIDTH);
    }

    /** Writes the part from a row on; the first row after it. */
    int write(int row) {
        sheet.pageBreakBefore(row);
        sheet.section(row, "Each product at its largest run: what a unit costs, by head, in " + home);
        List<Column<Line>> columns = new ArrayList<>();
        columns.add(product);
        columns.add(Column.<Line>of("run", "Run").words(line -> line.run().title()));
        columns.addAll(byHead);
        columns.add(Column.<Line>of("total", "total")
                .formula(this::total)
                .format(money)
                .look(Look.TOTAL)
                .width(WIDTH));
        columns.add(used);
        columns.add(left);
        Placed<Line> table = new Table<>(columns).at(sheet, row + 1, lines).write();
        return lines.isEmpty() ? table.next() : charts(table);
    }

    private Expr total(Row<Line> row) {
        List<Expr> parts = new ArrayList<>();
        for (Column<Line> head : byHead) {
            parts.add(row.ref(head));
        }
        return Expr.sum(parts);
    }

    private static String name(Line line, int called) {
        String product = line.run().product();
        String name = called == 1 ? product : product + " (" + stem(line.book()) + ")";
        return line.run().units() == null ? name + ", per kg" : name;
    }

    private static String stem(String book) {
        int dot = book.lastIndexOf('.');
        return dot < 0 ? book : book.substring(0, dot);
    }

    private int charts(Placed<Line> table) {
        int last = Math.min(lines.size(), MOST_IN_CHART) - 1;
        String which = lines.size() <= MOST_IN_CHART
                ? ""
                : ", the first " + MOST_IN_CHART + " of " + lines.size() + " products";
        int top = table.next() + 1;
        if (lines.size() > LINES_ABOVE_CHARTS) {
            sheet.pageBreakBefore(top);
        }
        List<Chart.Series> heads = new ArrayList<>();
        for (Column<Line> head : byHead) {
            heads.add(series(table, head.heading(), head, last));
        }
        int first = SheetBuilder.FIRST_COLUMN;
        sheet.chart(
                chart("What a unit costs at the largest run" + which, home + " per unit", "0.00", heads, top, first));
        List<Chart.Series> cash =
                List.of(series(table, "used or wasted", used, last), series(table, "left in stock", left, last));
        sheet.chart(chart("Cost of that run's items" + which, home, "#,##0", cash, top, first + CHART_COLUMNS));
        return top + CHART_ROWS + 2;
    }

    private Chart.Series series(Placed<Line> table, String name, Column<Line> column, int last) {
        return new Chart.Series(name, table.range(product, 0, last), table.range(column, 0, last));
    }

    private static Chart chart(String title, String up, String format, List<Chart.Series> series, int top, int left) {
        return new Chart(
                Chart.Kind.STACKED_COLUMNS,
                title,
                new Chart.Axes("Product", up, new NumberFormat(format), false),
                series,
                new Chart.Place(top, left, top + CHART_ROWS, left + CHART_COLUMNS - 1));
    }
}
