package perkilo.report.order;

import java.math.BigDecimal;
import java.util.IdentityHashMap;
import java.util.Objects;
import perkilo.costing.Market;
import perkilo.orderplan.HorizonProblem;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.SupplierOrder;
import perkilo.origin.Decimals;
import perkilo.report.part.PurchaseLine;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;
import perkilo.units.Currencies;

/** The table of the orders of a plan, for the sheet, for JSON and for the terminal. */
public final class OrdersTable {

    private final OrderPlan plan;
    private final Market market;
    private final String home;
    private final int homeDigits;
    private final IdentityHashMap<SupplierOrder, SupplierOrdersSheet.OrderCells> cells;

    private OrdersTable(
            OrderOutcome.Planned planned, IdentityHashMap<SupplierOrder, SupplierOrdersSheet.OrderCells> cells) {
        this.plan = planned.plan();
        this.market = planned.market();
        this.home = planned.book().settings().home().getCurrencyCode();
        this.homeDigits = Currencies.minorDigits(planned.book().settings().home());
        this.cells = cells;
    }

    /** The orders of a plan, for JSON and the terminal. */
    public static Table.Filled<SupplierOrder> of(OrderOutcome.Planned planned) {
        return of(planned, new IdentityHashMap<>());
    }

    /**
     * The orders of a plan, for a sheet.
     *
     * @param cells of each order
     */
    static Table.Filled<SupplierOrder> of(
            OrderOutcome.Planned planned, IdentityHashMap<SupplierOrder, SupplierOrdersSheet.OrderCells> cells) {
        return new OrdersTable(planned, cells).filled();
    }

    private Table.Filled<SupplierOrder> filled() {
        return Table.of(
                        supplier(),
                        orderBy(),
                        arrivesOn(),
                        neededBy(),
                        leadTime(),
                        currency(),
                        lines(),
                        goods(),
                        Column.<SupplierOrder>of("charges", "")
                                .json(order -> order.cost().charges())
                                .notOnSheet(),
                        Column.<SupplierOrder>of("chargesByKind", "")
                                .json(ChargeFacts::of)
                                .notOnSheet(),
                        landed())
                .with(plan.orders());
    }

    private SupplierOrdersSheet.OrderCells cells(SupplierOrder order) {
        return Objects.requireNonNull(cells.get(order));
    }

    private Column<SupplierOrder> supplier() {
        return Column.<SupplierOrder>of("supplier", "Supplier")
                .words(order -> order.supplier().name())
                .look(Look.LABEL)
                .link(order -> cells(order).title())
                .width(34)
                .json()
                .terminal(order -> order.supplier().name());
    }

    private static Column<SupplierOrder> orderBy() {
        return QuoteDates.<SupplierOrder>dates("orderBy", "Order by", order -> order.orderBy())
                .width(15)
                .json(SupplierOrder::orderBy)
                .terminal(order -> order.orderBy().toString());
    }

    private static Column<SupplierOrder> arrivesOn() {
        return QuoteDates.<SupplierOrder>dates("arrivesOn", "Arrives on", order -> order.arrivesOn())
                .width(17)
                .json(SupplierOrder::arrivesOn)
                .terminal(order -> order.arrivesOn().toString());
    }

    private static Column<SupplierOrder> neededBy() {
        return QuoteDates.<SupplierOrder>dates("neededBy", "Needed by", order -> order.neededBy())
                .width(17)
                .json(SupplierOrder::neededBy)
                .terminal(order -> order.neededBy().toString());
    }

    private static Column<SupplierOrder> leadTime() {
        return Column.<SupplierOrder>of("leadTimeDays", "")
                .json(order ->
                        order.supplier().leadTimeDays() == null ? null : HorizonProblem.leadDays(order.supplier()))
                .notOnSheet();
    }

    private static Column<SupplierOrder> currency() {
        return Column.<SupplierOrder>of("currency", "")
                .json(order -> order.supplier().currency().getCurrencyCode())
                .notOnSheet();
    }

    private Column<SupplierOrder> lines() {
        Table<PurchaseLine> orderLines = OrderLines.inJson(plan, home);
        return Column.<SupplierOrder>of("lines", "Lines")
                .value(order -> BigDecimal.valueOf(order.cost().lines().size()))
                .format(NumberFormat.WHOLE)
                .width(17)
                .json(order -> orderLines.with(OrderLines.of(market, order)))
                .terminal(order -> Integer.toString(order.cost().lines().size()));
    }

    private Column<SupplierOrder> goods() {
        return Column.<SupplierOrder>of("goods", "Goods")
                .value(order -> order.cost().goods())
                .formula(row -> cells(row.entry()).goods())
                .format(order -> NumberFormat.money(order.supplier().currency().getCurrencyCode(), 2))
                .width(17)
                .json()
                .terminal(order -> Decimals.amount(
                                order.cost().goods(),
                                Currencies.minorDigits(order.supplier().currency()))
                        + " " + order.supplier().currency());
    }

    private Column<SupplierOrder> landed() {
        return Column.<SupplierOrder>of("landedHome", "Landed, " + home)
                .value(SupplierOrder::landed)
                .formula(row -> cells(row.entry()).landed())
                .format(NumberFormat.money(home, 2))
                .width(17)
                .json()
                .terminal(order -> Decimals.amount(order.landed(), homeDigits));
    }
}
