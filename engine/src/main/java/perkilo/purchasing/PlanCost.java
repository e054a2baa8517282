package perkilo.purchasing;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The exact cost of a plan.
 *
 * <p>An order's landed cost in home currency is {@code [ (G + S + I + F) (1 + margin) + duty ] × rate} with goods G
 * (each line rounded as invoiced), small-order charge S, insurance {@code I = ι G} and freight {@code F = F0 + f kg}.
 * Duty on basis CIF is {@code Σ d (goods (1 + ι) + f kg + (F0 + S) goods / G)}, on basis FOB {@code Σ d (goods + S
 * goods / G)}, each line at its own rate d; if G is zero, every line has an equal share. Freight by weight goes to the
 * lines by weight, charges for the whole order by goods value.
 *
 * @param orders by period, then vendor
 * @param outlay what leaves the bank for all orders, in home currency
 * @param holding the cost of keeping stock, in home currency
 * @param credit the value of leftovers, in home currency
 * @param orderCost what all orders cost the buyer, beside what is paid for them; in home currency
 */
public record PlanCost(
        List<OrderCost> orders, BigDecimal outlay, BigDecimal holding, BigDecimal credit, BigDecimal orderCost) {

    public PlanCost {
        orders = List.copyOf(orders);
    }

    /** Computes the cost of lines alone; lets a caller reuse costs that it knows already. */
    @FunctionalInterface
    public interface Lines {

        /**
         * The cost of packs of a quote.
         *
         * @param quote index into the problem's quotes
         * @return the same as {@link OwnCost#of}
         */
        OwnCost cost(int quote, long packs);
    }

    /**
     * Costs a plan.
     *
     * @throws IllegalArgumentException if a line is below its quote's first price
     */
    public static PlanCost of(PurchaseProblem problem, PurchasePlan plan) {
        return of(problem, plan, ownCosts(problem));
    }

    /**
     * The costs of the orders of a plan, by period, then vendor, without holding and credit.
     *
     * @throws IllegalArgumentException if a line is below its quote's first price
     */
    public static List<OrderCost> ordersOf(PurchaseProblem problem, PurchasePlan plan) {
        return orders(problem, plan, ownCosts(problem));
    }

    private static Lines ownCosts(PurchaseProblem problem) {
        return (index, packs) -> {
            Quote quote = problem.quotes().get(index);
            return OwnCost.of(quote, problem.vendorOf(quote), packs);
        };
    }

    /**
     * Costs a plan.
     *
     * @param lines the costs of the plan's lines alone
     * @throws IllegalArgumentException if a line is below its quote's first price
     */
    public static PlanCost of(PurchaseProblem problem, PurchasePlan plan, Lines lines) {
        List<OrderCost> orders = orders(problem, plan, lines);
        BigDecimal outlay = ZERO;
        for (OrderCost order : orders) {
            outlay = outlay.add(order.landed());
        }
        BigDecimal holding = ZERO;
        BigDecimal credit = ZERO;
        for (int item = 0; item < problem.needs().size(); item++) {
            Need need = problem.needs().get(item);
            if (need.holdingPerUnit().signum() == 0 && need.creditPerUnit().signum() == 0) {
                continue;
            }
            Shelf shelf = Shelf.withPurchases(need, purchases(problem, plan, item));
            holding = holding.add(need.holding(shelf));
            credit = credit.add(need.credit(shelf));
        }
        BigDecimal orderCost = problem.orderCost().multiply(BigDecimal.valueOf(orders.size()));
        return new PlanCost(orders, outlay, holding, credit, orderCost);
    }

    /** What is bought of an item. */
    public static List<Shelf.Bought> purchases(PurchaseProblem problem, PurchasePlan plan, int item) {
        List<Shelf.Bought> purchases = new ArrayList<>();
        for (PurchasePlan.Line line : plan.lines()) {
            Quote quote = problem.quotes().get(line.quote());
            if (quote.item() == item) {
                purchases.add(quote.bought(problem.needs().get(item), line));
            }
        }
        return purchases;
    }

    /** What is bought of an item in each period, in its base unit. */
    public static List<BigDecimal> boughtPerPeriod(PurchaseProblem problem, PurchasePlan plan, int item) {
        BigDecimal[] bought = new BigDecimal[problem.periods()];
        Arrays.fill(bought, ZERO);
        for (PurchasePlan.Line line : plan.lines()) {
            Quote quote = problem.quotes().get(line.quote());
            if (quote.item() == item) {
                bought[line.period()] = bought[line.period()].add(quote.quantity(line.packs()));
            }
        }
        return List.of(bought);
    }

    /** What leaves the bank for the orders of one period, in home currency. */
    public BigDecimal outlay(int period) {
        return orders.stream()
                .filter(order -> order.period() == period)
                .map(OrderCost::landed)
                .reduce(ZERO, BigDecimal::add);
    }

    /** What counts towards each limit on cash, in home currency. */
    public List<BigDecimal> paid(PurchaseProblem problem) {
        BigDecimal[] paid = new BigDecimal[problem.cashLimits()];
        Arrays.fill(paid, ZERO);
        for (OrderCost order : orders) {
            for (Payments.Part part : problem.paymentsFor(order.vendor(), order.period())) {
                paid[part.limit()] = paid[part.limit()].add(order.paid(part));
            }
        }
        return List.of(paid);
    }

    /** The amount that a planner minimises: landed cost, holding and cost of orders, less the credit for leftovers. */
    public BigDecimal objective() {
        BigDecimal onTop = holding.add(orderCost).subtract(credit);
        return onTop.signum() == 0 ? outlay : outlay.add(onTop);
    }

    /** All lines of all orders. */
    public List<LineCost> lines() {
        List<LineCost> lines = new ArrayList<>();
        for (OrderCost order : orders) {
            lines.addAll(order.lines());
        }
        return lines;
    }

    private static List<OrderCost> orders(PurchaseProblem problem, PurchasePlan plan, Lines costs) {
        List<OrderCost> orders = new ArrayList<>();
        @Nullable OrderCosting[] byVendor = new OrderCosting[problem.vendors().size()];
        int period = 0;
        for (PurchasePlan.Line line : plan.lines()) {
            if (line.period() != period) {
                moveTo(orders, byVendor);
                period = line.period();
            }
            int vendor = problem.quotes().get(line.quote()).vendor();
            OrderCosting order = byVendor[vendor];
            if (order == null) {
                order = new OrderCosting(vendor, problem.vendors().get(vendor));
                byVendor[vendor] = order;
            }
            order.add(line, costs.cost(line.quote(), line.packs()));
        }
        moveTo(orders, byVendor);
        return orders;
    }

    /** Moves the orders of one period to the others, vendor by vendor. */
    private static void moveTo(List<OrderCost> orders, @Nullable OrderCosting[] byVendor) {
        for (int vendor = 0; vendor < byVendor.length; vendor++) {
            OrderCosting order = byVendor[vendor];
            if (order != null) {
                orders.add(order.order());
                byVendor[vendor] = null;
            }
        }
    }
}
