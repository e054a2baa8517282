package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import perkilo.costing.Item;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.StockFlow;
import perkilo.purchasing.LineCost;
import perkilo.report.part.Shortage;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/**
 * The sheet Stock and leftovers: the value of the stock over time, what is left at the end and until when it can be
 * used, and how the lots of each item are used up.
 *
 * @param sheet the sheet
 * @param holding of all items, in home currency
 * @param credit of all items, in home currency
 * @param missing of all items, in kilograms and pieces together: above zero where not enough is ordered
 */
record LeftoversSheet(ResultSheet sheet, Expr holding, Expr credit, Expr missing) {

    static final String NOT_ENOUGH = "The orders no longer cover all needs. Run perkilo order again.";

    static LeftoversSheet of(
            OrderOutcome.Planned planned,
            IdentityHashMap<Item, Expr> needs,
            IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> lines) {
        return new Writer(planned).write(needs, lines);
    }

    private static final class Writer {
        private static final String NAME = "Stock and leftovers";
        private static final int CHART_ROWS = 17;
        private static final int CHART_COLUMNS = 8;

        private final OrderPlan plan;
        private final OrderOutcome.Planned planned;
        private final SheetBuilder sheet = new SheetBuilder(NAME);
        private final StockColumns columns;
        private final List<StockBlock> blocks = new ArrayList<>();
        private final IdentityHashMap<StockFlow, StockBlock> blockOf = new IdentityHashMap<>();
        private final NumberFormat money;
        private final String home;

        Writer(OrderOutcome.Planned planned) {
            this.planned = planned;
            this.plan = planned.plan();
            this.home = planned.book().settings().home().getCurrencyCode();
            this.columns = new StockColumns(plan.days(), home);
            this.money = NumberFormat.money(home, 2);
        }

        LeftoversSheet write(
                IdentityHashMap<Item, Expr> needs, IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> lines) {
            sheet.freeze(2, 1).landscape();
            sheet.title(0, NAME);
            sheet.hint(
                    1,
                    "The columns are the days on which something is needed. What expires first is used first, until its last"
                            + " day. What arrives between two days stands under the later one, and what expires between"
                            + " them under the earlier one.");
            Placed<StockLine> worth = worth(4);
            int chart = worth.next() + 1;
            int leftovers = chart + CHART_ROWS;
            int firstItem = leftovers + 4 + leftovers().size();
            int next = blocks(firstItem, needs, lines);
            worth.write();
            chart(worth, chart);
            writeLeftovers(leftovers);
            Expr missing = missing(firstItem, next);
            sheet.sentence(
                    2,
                    SheetBuilder.FIRST_COLUMN,
                    Look.HINT,
                    Shortage.words(Expr.of(0).minus(missing), "", NOT_ENOUGH));
            sheet.markAttention(2, 2, Look.ERROR);
            return new LeftoversSheet(
                    sheet.build(),
                    Expr.sum(blocks.stream().map(StockBlock::holding).toList()),
                    Expr.sum(blocks.stream().map(StockBlock::credit).toList()),
                    missing);
        }

        /** Writes the items one below the other, and returns the row after them. */
        private int blocks(
                int first,
                IdentityHashMap<Item, Expr> needs,
                IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> lines) {
            int row = first;
            for (int index = 0; index < plan.stock().size(); index++) {
                StockBlock block = new StockBlock(columns, sheet, planned, index, row, needs, lines);
                block.write();
                blocks.add(block);
                blockOf.put(plan.stock().get(index), block);
                row = block.next() + 1;
            }
            return row;
        }

        /** The total missing of all items; zero in the original plan. */
        private Expr missing(int first, int last) {
            if (blocks.isEmpty()) {
                return Expr.of(0);
            }
            int names = blocks.get(0).column(columns.name);
            int quantities = blocks.get(0).column(columns.quantity);
            return Expr.sumWhere(
                    NAME,
                    SheetNames.cell(first, names) + ":" + SheetNames.cell(last, names),
                    StockBlock.MISSING,
                    SheetNames.cell(first, quantities) + ":" + SheetNames.cell(last, quantities),
                    BigDecimal.ZERO);
        }

        /** Writes the value of the stock after each day. */
        private Placed<StockLine> worth(int row) {
            sheet.section(row - 1, "Stock after each day, at the lowest listed prices");
            StockLine materials = new StockLine("Raw materials");
            StockLine packaging = new StockLine("Packaging");
            StockLine all = new StockLine("All");
            for (int each = 0; each < columns.days.size(); each++) {
                int period = each;
                var day = columns.days.get(period);
                materials.put(day, any -> worth(period, true), null, money, Look.PLAIN);
                packaging.put(day, any -> worth(period, false), null, money, Look.PLAIN);
                all.put(day, of -> of.sumAbove(day), null, money, Look.TOTAL);
            }
            return columns.worth.at(sheet, row, List.of(materials, packaging, all));
        }

        private Expr worth(int period, boolean materials) {
            return Expr.sum(blocks.stream()
                    .filter(block -> block.isMaterial() == materials)
                    .map(block -> block.worth(period))
                    .toList());
        }

        private void chart(Placed<StockLine> worth, int top) {
            List<Chart.Series> series = new ArrayList<>();
            for (StockLine line : worth.rows()) {
                series.add(new Chart.Series(
                        line.name(),
                        worth.headings(columns.firstDay(), columns.lastDay()),
                        worth.range(worth.indexOf(line), columns.firstDay(), columns.lastDay())));
            }
            int left = worth.column(columns.worthName);
            sheet.chart(new Chart(
                    Chart.Kind.LINES,
                    "Stock over time",
                    new Chart.Axes("Day", home + " at the lowest listed prices", NumberFormat.WHOLE, false),
                    series,
                    new Chart.Place(top, left, top + CHART_ROWS - 1, left + CHART_COLUMNS - 1)));
        }

        private List<Leftover> leftovers() {
            return plan.stock().stream()
                    .flatMap(flow -> Leftover.of(flow, plan.basis().horizon()).stream())
                    .toList();
        }

        private void writeLeftovers(int row) {
            sheet.section(row, "Left at the end");
            Table<Leftover> table = Leftover.table(
                    money,
                    leftover -> block(leftover).left(leftover.lot()),
                    leftover -> block(leftover).price());
            Placed<Leftover> left = table.at(sheet, row + 1, leftovers()).write();
            if (left.rows().isEmpty()) {
                sheet.hint(left.next(), "Nothing is left that can be used later.");
            }
        }

        private StockBlock block(Leftover leftover) {
            return Objects.requireNonNull(blockOf.get(leftover.flow()));
        }
    }
}
