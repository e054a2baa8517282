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

/** Every product at its largest run: what a unit costs by head, what its items take, and charts of both. */
final class ProductsPart {

    private static final int CHART_ROWS = 20;

    /** So many products leave room for the charts on their page. */
    private static final int LINES_ABOVE_CHARTS = 16;

    /** More columns than this cannot be told apart. */
    private static final int MOST_IN_CHART = 30;

    /** The columns before these are as wide as the tables above need them. */
    private static final int WIDE_FROM = 11;

    private static final int USED = Head.values().length + 3;

    private final SheetBuilder sheet;
    private final String home;
    private final NumberFormat money;
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
    }

    /** Writes the part from a row on; the first row after it. */
    int write(int row) {
        sheet.pageBreakBefore(row);
        sheet.text(row, 0, "Each product at its largest run: what a unit costs, by head, in " + home, Look.SECTION);
        List<String> heads = new ArrayList<>(List.of("Product", "Run"));
        for (Head head : Head.values()) {
            heads.add(head.words());
        }
        heads.addAll(List.of("total", "items used or wasted", "items left in stock"));
        for (int column = 0; column < heads.size(); column++) {
            if (column >= WIDE_FROM) {
                sheet.width(column, 15);
            }
            sheet.text(row + 1, column, heads.get(column), Look.HEADER);
        }
        Map<String, Integer> named = new HashMap<>();
        lines.forEach(line -> named.merge(line.run().product(), 1, Integer::sum));
        int next = row + 2;
        for (Line line : lines) {
            boolean unique = requireNonNull(named.get(line.run().product())) == 1;
            String name = line.run().product();
            product(next++, unique ? name : name + " (" + stem(line.book()) + ")", line.run());
        }
        return lines.isEmpty() ? next : charts(row + 2, next);
    }

    private static String stem(String book) {
        int dot = book.lastIndexOf('.');
        return dot < 0 ? book : book.substring(0, dot);
    }

    private void product(int row, String name, PortfolioRun run) {
        sheet.text(row, 0, run.units() == null ? name + ", per kg" : name, Look.LABEL);
        sheet.text(row, 1, run.title(), Look.PLAIN);
        int column = 2;
        Expr total = Expr.of(0);
        for (Head head : Head.values()) {
            BigDecimal amount = run.heads().getOrDefault(head, BigDecimal.ZERO);
            Expr cell = sheet.value(row, column++, Expr.of(amount), money, Look.PLAIN);
            total = total.isLive() ? total.plus(cell) : cell;
        }
        sheet.value(row, column, total, money, Look.TOTAL);
        BigDecimal used = run.outlay().subtract(run.stockLeft());
        sheet.value(row, USED, Expr.of(used), money, Look.PLAIN);
        sheet.value(row, USED + 1, Expr.of(run.stockLeft()), money, Look.PLAIN);
    }

    private int charts(int first, int next) {
        int last = Math.min(next - 1, first + MOST_IN_CHART - 1);
        String which = last == next - 1 ? "" : ", the first %d of %d products".formatted(MOST_IN_CHART, lines.size());
        int top = next + 1;
        if (lines.size() > LINES_ABOVE_CHARTS) {
            sheet.pageBreakBefore(top);
        }
        List<Chart.Series> byHead = new ArrayList<>();
        int column = 2;
        for (Head head : Head.values()) {
            byHead.add(series(head.words(), first, last, column++));
        }
        sheet.chart(
                chart("What a unit costs at the largest run" + which, home + " per unit", "0.00", byHead, top, 0, 6));
        List<Chart.Series> cash =
                List.of(series("used or wasted", first, last, USED), series("left in stock", first, last, USED + 1));
        sheet.chart(chart("What the items of that run take" + which, home, "#,##0", cash, top, 7, 13));
        return top + CHART_ROWS + 2;
    }

    private Chart.Series series(String name, int first, int last, int column) {
        return new Chart.Series(name, sheet.range(first, 0, last, 0), sheet.range(first, column, last, column));
    }

    private static Chart chart(
            String title, String up, String format, List<Chart.Series> series, int top, int left, int right) {
        return new Chart(
                Chart.Kind.STACKED_COLUMNS,
                title,
                "Product",
                up,
                new NumberFormat(format),
                false,
                series,
                top,
                left,
                top + CHART_ROWS,
                right);
    }
}
