package perkilo.report.order;

import perkilo.orderplan.LotUse;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.StockFlow;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** The stock of each item day by day, what is on order, and what is left, for JSON. */
public final class StockTable {

    private final OrderPlan plan;

    private StockTable(OrderPlan plan) {
        this.plan = plan;
    }

    /** A row for each item of a plan. */
    public static Table.Filled<StockFlow> of(OrderPlan plan) {
        return new StockTable(plan).items().with(plan.stock());
    }

    private Table<StockFlow> items() {
        Table<LotUse> lots = lotsOnOrder();
        Table<Leftover> leftovers = Leftover.table();
        return Table.of(
                Column.<StockFlow>of("item", "Item").json(flow -> flow.item().name()),
                Column.<StockFlow>of("unit", "Unit")
                        .json(flow -> flow.item().item().unit()),
                Column.<StockFlow>of("days", "Days").json(flow -> StockDay.of(flow, plan.days())),
                Column.<StockFlow>of("onOrder", "On order").json(flow -> lots.with(flow.onOrder())),
                Column.<StockFlow>of("leftovers", "Left at the end")
                        .json(flow ->
                                leftovers.with(Leftover.of(flow, plan.basis().horizon()))));
    }

    /** Goods that were on order at the start; without a day to use them from if they arrive after the planned days. */
    private Table<LotUse> lotsOnOrder() {
        return Table.of(
                Column.<LotUse>of("quantity", "Quantity")
                        .value(LotUse::quantity)
                        .json(),
                Column.<LotUse>of("expectedOn", "Expected on").json(LotUse::expected),
                Column.<LotUse>of("usableFrom", "Usable from")
                        .json(lot -> lot.arrivesIn(plan.basis().horizon())
                                ? lot.from().toString()
                                : null),
                Column.<LotUse>of("usableUntil", "Usable until").json(LotUse::lastDay),
                Column.<LotUse>of("left", "Left at the end").value(LotUse::left).json());
    }
}
