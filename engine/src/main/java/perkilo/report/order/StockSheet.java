package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import perkilo.costing.Item;
import perkilo.orderplan.LotUse;
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

/**
 * Stock and leftovers: what the stock is worth over time, what is left at the end and until when it can be used, and
 * how the lots of each item are used up.
 *
 * @param sheet the sheet
 * @param holding of all items, in home currency
 * @param credit of all items, in home currency
 * @param missing of all items, in kilograms and pieces together: above zero where not enough is ordered
 */
record StockSheet(ResultSheet sheet, Expr holding, Expr credit, Expr missing) {

    static final String NOT_ENOUGH = "The orders no longer cover all needs. Run perkilo order again.";

    static StockSheet of(
            OrderOutcome.Planned planned,
            IdentityHashMap<Item, Expr> needs,
            IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> lines) {
        return new Writer(planned).write(needs, lines);
    }

    private static final class Writer {
        private static final String NAME = "Stock and leftovers";
        private static final int FIRST_MONTH = 3;
        private static final int VALUES = 4;
        private static final int CHART_ROWS = 17;

        private final OrderPlan plan;
        private final OrderOutcome.Planned planned;
        private final SheetBuilder sheet = new SheetBuilder(NAME);
        private final MonthRows months;
        private final NumberFormat money;
        private final String home;

        Writer(OrderOutcome.Planned planned) {
            this.planned = planned;
            this.plan = planned.plan();
            this.months = new MonthRows(sheet, FIRST_MONTH, plan.months());
            this.home = planned.book().settings().home().getCurrencyCode();
            this.money = NumberFormat.money(home, 2);
        }

        StockSheet write(
                IdentityHashMap<Item, Expr> needs, IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> lines) {
            frame();
            int leftovers = VALUES + 5 + CHART_ROWS;
            int firstItem = leftovers + 4 + leftoverCount();
            int row = firstItem;
            List<StockBlock.Cells> items = new ArrayList<>();
            for (int index = 0; index < plan.stock().size(); index++) {
                StockBlock block = new StockBlock(months, planned, index, row);
                items.add(block.write(needs, lines));
                row = block.next() + 1;
            }
            values(items);
            leftovers(items, leftovers);
            Expr missing = missing(firstItem, row);
            sheet.sentence(2, 0, Look.HINT, Shortage.words(Expr.of(0).minus(missing), "", NOT_ENOUGH));
            sheet.markAttention(2, 2, Look.ERROR);
            return new StockSheet(
                    sheet.build(),
                    Expr.sum(items.stream().map(StockBlock.Cells::holding).toList()),
                    Expr.sum(items.stream().map(StockBlock.Cells::credit).toList()),
                    missing);
        }

        /** Nothing in the plan as it stands; each item's block says so too. */
        private static Expr missing(int first, int last) {
            int column = StockBlock.MISSING_COLUMN;
            return Expr.sumWhere(
                    NAME,
                    SheetNames.cell(first, 0) + ":" + SheetNames.cell(last, 0),
                    StockBlock.MISSING,
                    SheetNames.cell(first, column) + ":" + SheetNames.cell(last, column),
                    BigDecimal.ZERO);
        }

        private void frame() {
            sheet.widths(52, 13, 13).freeze(2, 1).landscape();
            for (int column = FIRST_MONTH; column <= FIRST_MONTH + months.count() + 1; column++) {
                sheet.width(column, 13);
            }
            sheet.text(0, 0, NAME, Look.TITLE);
            sheet.text(
                    1,
                    0,
                    "What expires first is used first. A lot is used in the months that end on or before its last day; what is"
                            + " left of it in the last of them stands there as expired. Goods on order are used from"
                            + " the first month that begins on or after the day they are expected.",
                    Look.HINT);
        }

        private void values(List<StockBlock.Cells> items) {
            sheet.text(VALUES - 1, 0, "Stock at the end of each month, at the lowest listed prices", Look.SECTION);
            sheet.text(VALUES, 0, "In " + home, Look.HEADER);
            months.heads(VALUES);
            months.write(VALUES + 1, "Raw materials", period -> value(items, period, true), money, Look.PLAIN);
            months.write(VALUES + 2, "Packaging", period -> value(items, period, false), money, Look.PLAIN);
            months.write(
                    VALUES + 3,
                    "All",
                    period -> sheet.sumOfColumn(months.column(period), VALUES + 1, VALUES + 2),
                    money,
                    Look.TOTAL);
            sheet.chart(new Chart(
                    Chart.Kind.LINES,
                    "Stock over time",
                    "Month",
                    home + " at the lowest listed prices",
                    NumberFormat.WHOLE,
                    false,
                    List.of(series("Raw materials", 1), series("Packaging", 2), series("All", 3)),
                    VALUES + 5,
                    0,
                    VALUES + 4 + CHART_ROWS,
                    7));
        }

        private Chart.Series series(String name, int row) {
            int last = months.column(months.count() - 1);
            return new Chart.Series(
                    name,
                    sheet.range(VALUES, FIRST_MONTH, VALUES, last),
                    sheet.range(VALUES + row, FIRST_MONTH, VALUES + row, last));
        }

        private Expr value(List<StockBlock.Cells> items, int period, boolean materials) {
            List<Expr> values = new ArrayList<>();
            for (int index = 0; index < items.size(); index++) {
                if (plan.stock().get(index).item().item().isMaterial() == materials) {
                    values.add(items.get(index).value().get(period));
                }
            }
            return Expr.sum(values);
        }

        private int leftoverCount() {
            return plan.stock().stream()
                    .mapToInt(flow -> flow.leftovers(plan.basis().horizon()).size())
                    .sum();
        }

        private void leftovers(List<StockBlock.Cells> items, int first) {
            int row = first;
            sheet.text(row++, 0, "Left at the end", Look.SECTION);
            String[] heads = {"Item", "Quantity", "Usable until", "Unit", "At the lowest listed price"};
            for (int column = 0; column < heads.length; column++) {
                sheet.text(row, column, heads[column], Look.HEADER);
            }
            row++;
            for (int index = 0; index < items.size(); index++) {
                StockFlow flow = plan.stock().get(index);
                for (int lot = 0; lot < flow.lots().size(); lot++) {
                    LotUse use = flow.lots().get(lot);
                    if (use.isLeftAfter(plan.basis().horizon())) {
                        leftover(
                                row++,
                                flow,
                                use,
                                items.get(index),
                                items.get(index).left().get(lot));
                    }
                }
            }
            if (leftoverCount() == 0) {
                sheet.text(row, 0, "Nothing that can be used later.", Look.HINT);
            }
        }

        private void leftover(int row, StockFlow flow, LotUse lot, StockBlock.Cells cells, Expr left) {
            sheet.text(row, 0, flow.item().name(), Look.LABEL);
            Expr quantity =
                    sheet.value(row, 1, left, LotTable.format(flow.item().item()), Look.PLAIN);
            sheet.text(
                    row,
                    2,
                    lot.lastDay() == null ? "no end known" : lot.lastDay().toString(),
                    Look.PLAIN);
            sheet.text(row, 3, flow.item().item().unit(), Look.PLAIN);
            sheet.value(row, 4, quantity.times(cells.price()), money, Look.PLAIN);
        }
    }
}
