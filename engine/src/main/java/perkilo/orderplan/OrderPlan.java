package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import perkilo.costing.Market;
import perkilo.origin.Counted;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PurchasePlan;

/**
 * The orders of a horizon, and the stock that follows from them.
 *
 * @param basis the purchase problem
 * @param plan the purchases
 * @param cost of the purchases, in home currency
 * @param bound no plan costs less than this, in home currency
 * @param proven whether no plan is cheaper
 * @param orders by day, then by arrival and supplier
 * @param stock the stock of each item, in the order of the items
 */
public record OrderPlan(
        HorizonProblem basis,
        PurchasePlan plan,
        PlanCost cost,
        BigDecimal bound,
        boolean proven,
        List<SupplierOrder> orders,
        List<StockFlow> stock) {

    public OrderPlan {
        orders = List.copyOf(orders);
        stock = List.copyOf(stock);
    }

    static OrderPlan of(
            Market market, HorizonProblem basis, PurchasePlan plan, PlanCost cost, BigDecimal bound, boolean proven) {
        List<StockFlow> stock = IntStream.range(0, basis.items().size())
                .mapToObj(item -> StockFlow.of(basis, basis.items().get(item), bought(basis, cost, item)))
                .toList();
        Map<PurchasePlan.Line, Integer> used = firstUse(stock);
        List<SupplierOrder> orders = cost.orders().stream()
                .map(order -> SupplierOrder.of(market, basis, order, used))
                .sorted(Comparator.comparing(SupplierOrder::orderBy).thenComparing(SupplierOrder::arrivesOn))
                .toList();
        return new OrderPlan(basis, plan, cost, bound, proven, orders, stock);
    }

    /** By line: the first period in which its goods are used. */
    private static Map<PurchasePlan.Line, Integer> firstUse(List<StockFlow> stock) {
        Map<PurchasePlan.Line, Integer> first = new HashMap<>();
        for (StockFlow flow : stock) {
            for (LotUse lot : flow.lots()) {
                int period = lot.firstUse();
                if (lot.source() instanceof LotUse.Bought bought && period >= 0) {
                    first.put(bought.line().line(), period);
                }
            }
        }
        return first;
    }

    private static List<LotUse.Bought> bought(HorizonProblem basis, PlanCost cost, int item) {
        return linesOf(basis, cost, item).stream()
                .map(line ->
                        new LotUse.Bought(line, basis.listings().get(line.line().quote())))
                .toList();
    }

    private static List<LineCost> linesOf(HorizonProblem basis, PlanCost cost, int item) {
        return cost.lines().stream()
                .filter(line ->
                        basis.problem().quotes().get(line.line().quote()).item() == item)
                .toList();
    }

    /** The days on which something is needed. */
    public List<LocalDate> days() {
        return basis.horizon().days();
    }

    /** The purchases of an item for a day: one line for each pack size and supplier. */
    public List<LineCost> purchases(int item, int period) {
        return linesOf(basis, cost, item).stream()
                .filter(line -> line.line().period() == period)
                .toList();
    }

    /** The order that must be placed first; empty if there is none. */
    public Optional<SupplierOrder> next() {
        return orders.stream().findFirst();
    }

    /** The number of suppliers who get an order. */
    public long suppliers() {
        return cost.orders().stream()
                .map(order -> basis.supplierOf(order.vendor()))
                .distinct()
                .count();
    }

    /** All payments for the orders, in home currency. */
    public BigDecimal outlay() {
        return cost.outlay();
    }

    /** The most that a cheaper plan could save, in home currency. */
    public BigDecimal gap() {
        return cost.objective().subtract(bound).max(BigDecimal.ZERO);
    }

    /** The plan in one sentence: orders, suppliers, payments, and the next order. */
    public String answer(String home) {
        return next().map(first -> "%s to %s, %s %s; next: order from %s by %s"
                        .formatted(
                                Counted.of(orders.size(), "order"),
                                Counted.of(suppliers(), "supplier"),
                                Quantities.amount(outlay()),
                                home,
                                first.supplier().name(),
                                day(first.orderBy())))
                .orElse("Nothing has to be ordered: the stock covers all that is needed");
    }

    /** Whether a cheaper plan is possible, in one sentence. */
    public String proof(String home) {
        return proven
                ? "Proven: no plan is cheaper."
                : "Not proven: this is the best plan found in the time allowed. A cheaper one would save at most "
                        + Quantities.amount(gap()) + " " + home + ".";
    }

    private static String day(LocalDate day) {
        return day.toString();
    }
}
