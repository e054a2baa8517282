package perkilo.report.order;

import java.math.BigDecimal;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.orderplan.OrderPlan;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** The totals of a plan, in home currency. JSON shows them as an object, the sheet as a row for each figure. */
public final class PlanFacts {

    static final Column<OrderPlan> OUTLAY = fact("outlay", "Paid for all orders", OrderPlan::outlay);
    static final Column<OrderPlan> HOLDING =
            fact("holding", "Holding cost of stock", plan -> plan.cost().holding());
    static final Column<OrderPlan> ORDER_COST = fact(
            "orderCost", "Your own cost of placing orders", plan -> plan.cost().orderCost());
    static final Column<OrderPlan> CREDIT =
            fact("credit", "Credit for leftovers", plan -> plan.cost().credit());
    static final Column<OrderPlan> OBJECTIVE = fact(
            "objective",
            "Total minimised (orders + storage)",
            plan -> plan.cost().objective());
    static final Column<OrderPlan> BOUND = fact("bound", "Proven lower limit", OrderPlan::bound);

    private static final Table<OrderPlan> TABLE = Table.of(
            OUTLAY,
            HOLDING,
            ORDER_COST,
            CREDIT,
            OBJECTIVE,
            BOUND,
            fact("gap", "", OrderPlan::gap).notOnSheet(),
            Column.<OrderPlan>of("proven", "").json(OrderPlan::proven).notOnSheet());

    private PlanFacts() {}

    /** The totals of a plan. */
    public static Table.One<OrderPlan> of(OrderPlan plan) {
        return TABLE.one(plan);
    }

    private static Column<OrderPlan> fact(String key, String heading, Function<OrderPlan, @Nullable BigDecimal> value) {
        return Column.<OrderPlan>of(key, heading).value(value).json();
    }
}
