package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.StockFlow;
import perkilo.orderplan.SupplierOrder;
import perkilo.orderplan.Unmet;
import perkilo.origin.Origin;
import perkilo.purchasing.LineCost;
import perkilo.report.part.Shortage;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** Order plan: the answer in a sentence, the orders by date, and what is bought of each item for each day. */
final class PlanSheet {

    private static final String NAME = "Order plan";
    private static final int HEADLINE_ROW = 2;
    private static final int ANSWER_ROW = 3;
    private static final int FIRST_FIGURE = 5;
    private static final int FIGURES = 6;
    private static final String CHANGED = Sign.ATTENTION + " Changed since it was planned. Run perkilo order again.";
    private static final BigDecimal HALF_A_CENT = new BigDecimal("0.005");
    private static final int DAY_WIDTH = 17;

    private final OrderOutcome.Planned planned;
    private final OrderPlan plan;
    private final SupplierOrdersSheet orders;
    private final LeftoversSheet stock;
    private final SheetBuilder sheet = new SheetBuilder(NAME);
    private final String home;
    private final NumberFormat money;

    /** A figure of the plan, and how it is computed from other cells. */
    private record Figure(Column<OrderPlan> fact, Function<Row<Figure>, Expr> live) {}

    /** An item of the plan. */
    private record PlannedItem(int index, StockFlow flow) {}

    private PlanSheet(OrderOutcome.Planned planned, SupplierOrdersSheet orders, LeftoversSheet stock) {
        this.planned = planned;
        this.plan = planned.plan();
        this.orders = orders;
        this.stock = stock;
        this.home = planned.book().settings().home().getCurrencyCode();
        this.money = NumberFormat.money(home, 2);
    }

    static ResultSheet of(OrderOutcome.Planned planned, SupplierOrdersSheet orders, LeftoversSheet stock) {
        return new PlanSheet(planned, orders, stock).write();
    }

    private ResultSheet write() {
        sheet.freeze(3, 1).landscape();
        sheet.title(0, NAME);
        sheet.hint(
                1,
                "Prices and rates of " + planned.book().settings().costingDate() + "; amounts in " + home
                        + " unless another currency is shown.");
        int next = part(FIRST_FIGURE + FIGURES + 2, "Orders by date", OrdersTable.of(planned, orders.orders()))
                .next();
        next = new CashTables(sheet, plan, home, orders.orders()).write(next + 1);
        next = part(next + 1, "Packs by item, for the first day that needs them", packs())
                .next();
        Column<PlannedItem> inAll = landedInAll();
        Placed<PlannedItem> landed =
                part(next + 1, "Landed cost by item, for the first day that needs it", landed(inAll));
        Expr outlay = landed.total(inAll);
        int behind = unmet(landed.next() + 1);
        Expr changed = PlanInputs.write(planned, sheet, behind);
        answer(outlay);
        figures(outlay, changed);
        return sheet.build();
    }

    private <R> Placed<R> part(int row, String title, Table.Filled<R> part) {
        sheet.section(row, title);
        return part.table().at(sheet, row + 1, part.rows()).write();
    }

    /** Writes what is late or not covered; the row after it. */
    private int unmet(int row) {
        Unmet unmet = planned.unmet();
        int next = row;
        if (!unmet.isEmpty()) {
            sheet.answer(HEADLINE_ROW, Sign.ATTENTION + " " + unmet.headline() + ". Everything else is planned.");
            sheet.markAttention(HEADLINE_ROW, HEADLINE_ROW, Look.ERROR);
        }
        if (!unmet.late().isEmpty()) {
            next = part(next, "Late", UnmetTables.LATE.with(unmet.late())).next() + 1;
        }
        if (!unmet.notCovered().isEmpty()) {
            next = part(next, "Not covered", UnmetTables.NOT_COVERED.with(unmet.notCovered()))
                            .next()
                    + 1;
        }
        return next;
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
        parts.add(Shortage.words(Expr.of(0).minus(stock.missing()), ". ", LeftoversSheet.NOT_ENOUGH));
        sheet.answer(ANSWER_ROW, Origin.NONE, parts).markAttention(ANSWER_ROW, ANSWER_ROW, Look.ERROR);
    }

    private void figures(Expr outlay, Expr changed) {
        Column<Figure> name =
                Column.<Figure>of("name", "").words(of -> of.fact().heading()).look(Look.LABEL);
        Column<Figure> figure = Column.<Figure>of("figure", "")
                .value(of -> of.fact().valueOf(plan))
                .formula(row -> row.entry().live().apply(row))
                .format(money);
        Figure paid = new Figure(PlanFacts.OUTLAY, row -> outlay);
        Figure holding = new Figure(PlanFacts.HOLDING, row -> stock.holding());
        Figure credit = new Figure(PlanFacts.CREDIT, row -> stock.credit());
        Figure own = new Figure(
                PlanFacts.ORDER_COST,
                row -> Expr.of(plan.orders().size())
                        .times(Expr.input(planned.book().settings().ordering().costPerOrder())));
        Figure objective = new Figure(PlanFacts.OBJECTIVE, row -> {
            Placed<Figure> all = row.table();
            return all.ref(paid, figure)
                    .plus(all.ref(holding, figure))
                    .plus(all.ref(own, figure))
                    .minus(all.ref(credit, figure));
        });
        Figure bound = new Figure(PlanFacts.BOUND, row -> Expr.of(plan.bound()));
        Column<Figure> remark = Column.<Figure>of("remark", "")
                .sentence(row -> row.entry().fact() == PlanFacts.BOUND
                        ? List.of(proven(row.table().ref(objective, figure), changed))
                        : List.of())
                .look(Look.HINT);
        Table.of(name, figure, remark)
                .withoutHeadings(sheet, FIRST_FIGURE, List.of(paid, holding, own, credit, objective, bound))
                .write()
                .mark(bound, remark, remark, Mark.attention(remark, Look.WARNING));
    }

    private ResultSheet.Part proven(Expr objective, Expr changed) {
        return new ResultSheet.Depending(
                unchanged(objective, changed),
                CHANGED,
                plan.proven() ? "proven: no plan is cheaper" : "the best found in the time allowed");
    }

    /** Below zero once the plan has another cost than planned, no longer covers every need, or an input has changed. */
    private Expr unchanged(Expr objective, Expr changed) {
        Expr then = Expr.of(plan.cost().objective());
        Expr apart = objective.minus(then).max(then.minus(objective));
        return Expr.of(HALF_A_CENT)
                .minus(apart)
                .min(Expr.of(0).minus(stock.missing()))
                .min(Expr.of(0).minus(changed));
    }

    /** How many packs of each item are bought for each day. */
    private Table.Filled<PlannedItem> packs() {
        List<Column<PlannedItem>> columns = new ArrayList<>();
        columns.add(name());
        columns.add(Column.<PlannedItem>of("unit", "Unit").words(PlanSheet::unit));
        columns.addAll(days(period ->
                day(period).sentence(row -> packs(plan.purchases(row.entry().index(), period)))));
        columns.add(Column.<PlannedItem>of("bought", "Total bought")
                .formula(row -> bought(row.entry()))
                .format(item -> StockLots.format(item.flow()))
                .look(Look.TOTAL)
                .width(DAY_WIDTH));
        return new Table<>(columns).with(items());
    }

    /** The cost of each item for each day, and in total. */
    private Table.Filled<PlannedItem> landed(Column<PlannedItem> inAll) {
        List<Column<PlannedItem>> columns = new ArrayList<>();
        columns.add(name().totalWords("All items, by day"));
        columns.add(Column.<PlannedItem>of("perUnit", "Landed per unit")
                .formula(row -> {
                    Expr quantity = bought(row.entry());
                    return quantity.value().signum() > 0 ? row.ref(inAll).over(quantity) : null;
                })
                .format(NumberFormat.money(home, 4))
                .words(PlanSheet::unit));
        List<Column<PlannedItem>> days = days(period -> day(period)
                .formula(row -> landed(plan.purchases(row.entry().index(), period)))
                .format(money)
                .sum(plan.cost().outlay(period)));
        columns.addAll(days);
        columns.add(inAll.formula(row -> row.sum(days)));
        return new Table<>(columns).with(items());
    }

    private Column<PlannedItem> landedInAll() {
        return Column.<PlannedItem>of("inAll", "Total")
                .format(money)
                .look(Look.TOTAL)
                .width(DAY_WIDTH)
                .sum()
                .totalLook(Look.KEY);
    }

    private List<PlannedItem> items() {
        List<PlannedItem> items = new ArrayList<>();
        for (int index = 0; index < plan.stock().size(); index++) {
            items.add(new PlannedItem(index, plan.stock().get(index)));
        }
        return items;
    }

    private static Column<PlannedItem> name() {
        return Column.<PlannedItem>of("item", "Item")
                .words(item -> item.flow().item().name())
                .look(Look.LABEL);
    }

    private static String unit(PlannedItem item) {
        return item.flow().item().item().unit();
    }

    private List<Column<PlannedItem>> days(IntFunction<Column<PlannedItem>> column) {
        List<Column<PlannedItem>> days = new ArrayList<>();
        for (int period = 0; period < plan.days().size(); period++) {
            days.add(column.apply(period));
        }
        return days;
    }

    private Column<PlannedItem> day(int period) {
        String day = plan.days().get(period).toString();
        return Column.<PlannedItem>of(day, day).width(DAY_WIDTH);
    }

    private List<ResultSheet.Part> packs(List<LineCost> lines) {
        List<ResultSheet.Part> parts = new ArrayList<>();
        for (LineCost line : lines) {
            Listing listing = plan.basis().listings().get(line.line().quote());
            if (!parts.isEmpty()) {
                parts.add(new ResultSheet.Words(" + "));
            }
            parts.add(new ResultSheet.Fixed(cells(line).packs(), 0));
            parts.add(new ResultSheet.Words(" × " + listing.offer().pack()));
        }
        return parts;
    }

    /** How much of an item is bought in all. */
    private Expr bought(PlannedItem item) {
        List<Expr> quantities = new ArrayList<>();
        for (int period = 0; period < plan.days().size(); period++) {
            quantities.add(sum(plan.purchases(item.index(), period), SupplierOrdersSheet.LineCells::quantity));
        }
        return Expr.sum(quantities);
    }

    private @Nullable Expr landed(List<LineCost> lines) {
        return lines.isEmpty() ? null : sum(lines, SupplierOrdersSheet.LineCells::landed);
    }

    private SupplierOrdersSheet.LineCells cells(LineCost line) {
        return Objects.requireNonNull(orders.lines().get(line));
    }

    private Expr sum(List<LineCost> lines, Function<SupplierOrdersSheet.LineCells, Expr> which) {
        return Expr.sum(lines.stream().map(line -> which.apply(cells(line))).toList());
    }
}
