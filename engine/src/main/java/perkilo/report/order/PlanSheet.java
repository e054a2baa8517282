package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import perkilo.costing.Listing;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.SupplierOrder;
import perkilo.origin.Origin;
import perkilo.purchasing.LineCost;
import perkilo.report.part.Shortage;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/** Order plan: the answer in a sentence, the orders by date, and what is bought of each item month by month. */
final class PlanSheet {

    private static final String NAME = "Order plan";
    private static final String CHANGED = "changed since it was planned: run perkilo order again";
    private static final BigDecimal HALF_A_CENT = new BigDecimal("0.005");

    private final OrderOutcome.Planned planned;
    private final OrderPlan plan;
    private final SupplierOrdersSheet orders;
    private final StockSheet stock;
    private final SheetBuilder sheet = new SheetBuilder(NAME);
    private final MonthRows months;
    private final String home;
    private final NumberFormat money;
    private int next = 3;

    private PlanSheet(OrderOutcome.Planned planned, SupplierOrdersSheet orders, StockSheet stock) {
        this.planned = planned;
        this.plan = planned.plan();
        this.orders = orders;
        this.stock = stock;
        this.months = new MonthRows(sheet, 2, plan.months());
        this.home = planned.book().settings().home().getCurrencyCode();
        this.money = NumberFormat.money(home, 2);
    }

    static ResultSheet of(OrderOutcome.Planned planned, SupplierOrdersSheet orders, StockSheet stock) {
        return new PlanSheet(planned, orders, stock).write();
    }

    private ResultSheet write() {
        sheet.widths(34, 15).freeze(3, 1).landscape();
        for (int column = 2; column <= 2 + months.count() + 2; column++) {
            sheet.width(column, 17);
        }
        sheet.text(0, 0, NAME, Look.TITLE);
        sheet.text(
                1,
                0,
                "Prices and rates of %s; amounts in %s unless another currency stands beside them."
                        .formatted(planned.book().settings().costingDate(), home),
                Look.HINT);
        int figures = next + 2;
        next = figures + 7;
        ordersByDate();
        next++;
        packs();
        next++;
        Expr outlay = landed();
        Expr changed = PlanInputs.write(planned, sheet, next + 2);
        answer(outlay);
        figures(outlay, changed, figures);
        return sheet.build();
    }

    private void answer(Expr outlay) {
        String text = plan.answer(home);
        SupplierOrder first = plan.next().orElse(null);
        List<ResultSheet.Part> parts = new ArrayList<>();
        if (first == null) {
            parts.add(new ResultSheet.Words(text));
        } else {
            int at = text.indexOf(", ") + 2;
            parts.add(new ResultSheet.Words(text.substring(0, at)));
            parts.add(new ResultSheet.Fixed(outlay, 2));
            parts.add(new ResultSheet.Words(text.substring(text.indexOf(" " + home, at))));
        }
        parts.add(Shortage.words(Expr.of(0).minus(stock.missing()), ". ", StockSheet.NOT_ENOUGH));
        sheet.sentence(3, 0, Look.ANSWER, Origin.NONE, parts);
        sheet.markAttention(3, 3, Look.ERROR);
    }

    private void figures(Expr outlay, Expr changed, int first) {
        int row = first;
        Expr paid = figure(row++, "Paid for all orders", outlay, plan.outlay());
        Expr holding =
                figure(row++, "Holding of stock", stock.holding(), plan.cost().holding());
        Expr credit = figure(
                row++, "Credit for leftovers", stock.credit(), plan.cost().credit());
        Expr made = figure(
                row++,
                "Made as small as possible",
                paid.plus(holding).minus(credit),
                plan.cost().objective());
        sheet.text(row, 0, "No plan can cost less than", Look.LABEL);
        sheet.value(row, 1, Expr.of(plan.bound()), money, Look.PLAIN);
        sheet.sentence(
                row,
                2,
                Look.HINT,
                new ResultSheet.Depending(
                        unchanged(made, changed),
                        CHANGED,
                        plan.proven() ? "proven: no plan is cheaper" : "the best found in the time allowed"));
        sheet.highlight(row, 2, row, 2, ResultSheet.Holds.saying(SheetNames.cell(row, 2), CHANGED), Look.WARNING);
    }

    /**
     * Below zero once the plan costs something else than what was planned, leaves anything uncovered, or rests on
     * something else.
     */
    private Expr unchanged(Expr made, Expr changed) {
        Expr planned = Expr.of(plan.cost().objective());
        Expr apart = made.minus(planned).max(planned.minus(made));
        return Expr.of(HALF_A_CENT)
                .minus(apart)
                .min(Expr.of(0).minus(stock.missing()))
                .min(Expr.of(0).minus(changed));
    }

    private Expr figure(int row, String name, Expr expr, BigDecimal engine) {
        sheet.text(row, 0, name, Look.LABEL);
        return sheet.checked(row, 1, expr, engine, money, Look.PLAIN);
    }

    private void ordersByDate() {
        sheet.text(next++, 0, "Orders by date", Look.SECTION);
        heads("Supplier", "Order by", "Here by", "Lines", "Goods", "Landed, " + home);
        for (int index = 0; index < plan.orders().size(); index++) {
            SupplierOrder order = plan.orders().get(index);
            SupplierOrdersSheet.OrderCells cells = orders.orders().get(index);
            Origin block = new Origin("", SupplierOrdersSheet.NAME, SheetNames.cell(cells.row(), 0));
            String code = order.supplier().currency().getCurrencyCode();
            sheet.text(next, 0, order.supplier().name(), Look.LABEL, block);
            sheet.text(next, 1, order.orderBy().toString(), Look.PLAIN);
            sheet.text(next, 2, order.neededBy().toString(), Look.PLAIN);
            sheet.value(next, 3, Expr.of(order.cost().lines().size()), NumberFormat.WHOLE, Look.PLAIN);
            sheet.value(next, 4, cells.goods(), NumberFormat.money(code, 2), Look.PLAIN);
            sheet.value(next, 5, cells.landed(), money, Look.PLAIN);
            next++;
        }
    }

    private void packs() {
        sheet.text(next++, 0, "Packs by item and month", Look.SECTION);
        heads("Item", "Unit");
        months.heads(next - 1);
        sheet.text(next - 1, months.column(months.count()), "Bought in all", Look.HEADER);
        for (int item = 0; item < plan.stock().size(); item++) {
            names(item);
            List<Expr> quantities = new ArrayList<>();
            for (int period = 0; period < months.count(); period++) {
                List<LineCost> lines = plan.purchases(item, period);
                if (!lines.isEmpty()) {
                    sheet.sentence(next, months.column(period), Look.PLAIN, packs(lines));
                }
                quantities.add(sum(lines, SupplierOrdersSheet.LineCells::quantity));
            }
            sheet.value(
                    next,
                    months.column(months.count()),
                    Expr.sum(quantities),
                    LotTable.format(plan.stock().get(item).item().item()),
                    Look.TOTAL);
            next++;
        }
    }

    private ResultSheet.Part[] packs(List<LineCost> lines) {
        List<ResultSheet.Part> parts = new ArrayList<>();
        for (LineCost line : lines) {
            Listing listing = plan.basis().listings().get(line.line().quote());
            if (!parts.isEmpty()) {
                parts.add(new ResultSheet.Words(" + "));
            }
            parts.add(new ResultSheet.Fixed(cells(line).packs(), 0));
            parts.add(new ResultSheet.Words(" × " + listing.offer().pack()));
        }
        return parts.toArray(ResultSheet.Part[]::new);
    }

    /** Writes what each item costs month by month, and returns the total. */
    private Expr landed() {
        sheet.text(next++, 0, "Landed cost by item and month of arrival", Look.SECTION);
        heads("Item", "Landed per unit");
        months.heads(next - 1);
        int totalColumn = months.column(months.count());
        sheet.text(next - 1, totalColumn, "In all", Look.HEADER);
        int first = next;
        for (int item = 0; item < plan.stock().size(); item++) {
            landed(item);
            next++;
        }
        sheet.text(next, 0, "All, by month of arrival", Look.TOTAL);
        for (int period = 0; period < months.count(); period++) {
            sheet.checked(
                    next,
                    months.column(period),
                    sheet.sumOfColumn(months.column(period), first, next - 1),
                    plan.cost().outlay(period),
                    money,
                    Look.TOTAL);
        }
        return sheet.value(next, totalColumn, sheet.sumOfColumn(totalColumn, first, next - 1), money, Look.KEY);
    }

    private void landed(int item) {
        names(item);
        List<Expr> cells = new ArrayList<>();
        List<Expr> quantities = new ArrayList<>();
        for (int period = 0; period < months.count(); period++) {
            List<LineCost> lines = plan.purchases(item, period);
            Expr landed = sum(lines, SupplierOrdersSheet.LineCells::landed);
            cells.add(lines.isEmpty() ? landed : sheet.value(next, months.column(period), landed, money, Look.PLAIN));
            quantities.add(sum(lines, SupplierOrdersSheet.LineCells::quantity));
        }
        Expr total = sheet.value(
                next, months.column(months.count()), months.sum(next, cells, months.count()), money, Look.TOTAL);
        Expr quantity = Expr.sum(quantities);
        if (quantity.value().signum() > 0) {
            sheet.value(next, 1, total.over(quantity), NumberFormat.money(home, 4), Look.PLAIN);
        }
    }

    private void names(int item) {
        sheet.text(next, 0, plan.stock().get(item).item().name(), Look.LABEL);
        sheet.text(next, 1, plan.stock().get(item).item().item().unit(), Look.PLAIN);
    }

    private void heads(String... heads) {
        for (int column = 0; column < heads.length; column++) {
            sheet.text(next, column, heads[column], Look.HEADER);
        }
        next++;
    }

    private SupplierOrdersSheet.LineCells cells(LineCost line) {
        return Objects.requireNonNull(orders.lines().get(line));
    }

    private Expr sum(List<LineCost> lines, Function<SupplierOrdersSheet.LineCells, Expr> which) {
        return Expr.sum(lines.stream().map(line -> which.apply(cells(line))).toList());
    }
}
