package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import perkilo.costing.Market;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PurchasePlan;

/**
 * What to order over the horizon, and what becomes of it.
 *
 * @param basis what had to be bought, and who sells it
 * @param plan what is bought
 * @param cost what that costs, in home currency
 * @param bound no plan costs less than this, in home currency
 * @param proven whether no plan is cheaper
 * @param orders by the day they have to be placed, then by month and supplier
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
        List<SupplierOrder> orders = cost.orders().stream()
                .map(order -> SupplierOrder.of(market, basis, order))
                .sorted(Comparator.comparing(SupplierOrder::orderBy).thenComparing(SupplierOrder::period))
                .toList();
        List<StockFlow> stock = IntStream.range(0, basis.items().size())
                .mapToObj(item -> StockFlow.of(basis.horizon(), basis.items().get(item), bought(basis, cost, item)))
                .toList();
        return new OrderPlan(basis, plan, cost, bound, proven, orders, stock);
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

    /** The months that are planned for. */
    public List<YearMonth> months() {
        return basis.horizon().months();
    }

    /** What is bought of an item for a month: one line for each pack size and supplier. */
    public List<LineCost> purchases(int item, int period) {
        return linesOf(basis, cost, item).stream()
                .filter(line -> line.line().period() == period)
                .toList();
    }

    /** The order that has to be placed first; empty where nothing has to be bought. */
    public Optional<SupplierOrder> next() {
        return orders.stream().findFirst();
    }

    /** How many suppliers get an order. */
    public long suppliers() {
        return cost.orders().stream().map(order -> order.vendor()).distinct().count();
    }

    /** What leaves the bank, in home currency. */
    public BigDecimal outlay() {
        return cost.outlay();
    }

    /** How far the plan may be from the cheapest, in home currency. */
    public BigDecimal gap() {
        return cost.objective().subtract(bound).max(BigDecimal.ZERO);
    }

    /** The plan in one sentence: how many orders, to whom, for how much, and which comes next. */
    public String answer(String home) {
        return next().map(first -> "%s to %s, %s %s; next: order from %s by %s"
                        .formatted(
                                counted(orders.size(), "order"),
                                counted(suppliers(), "supplier"),
                                Quantities.amount(outlay()),
                                home,
                                first.supplier().name(),
                                day(first.orderBy())))
                .orElse("Nothing has to be ordered: the stock covers all that is needed");
    }

    private static String counted(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String day(LocalDate day) {
        return day.toString();
    }
}
