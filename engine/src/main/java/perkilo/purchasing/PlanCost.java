package perkilo.purchasing;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a plan costs, exactly.
 *
 * <p>An order's landed cost in home currency is {@code [ (G + S + I + F) (1 + margin) + duty ] × rate} with goods G
 * (each line rounded as invoiced), small-order charge S, insurance {@code I = ι G} and freight {@code F = F0 + f kg}.
 * Duty on basis CIF is {@code Σ d (goods (1 + ι) + f kg) + d_s (F0 + S)}, on basis FOB {@code Σ d goods + d_s S}.
 * Per-kilogram freight goes to the lines by weight, duty by line, and what is charged for the order as a whole by goods
 * value.
 *
 * @param orders by period, then vendor
 * @param holding what keeping stock costs, in home currency
 * @param credit what leftovers are worth, in home currency
 */
public record PlanCost(List<OrderCost> orders, BigDecimal holding, BigDecimal credit) {

    public PlanCost {
        orders = List.copyOf(orders);
    }

    /**
     * Costs a plan.
     *
     * @throws IllegalArgumentException if a line is below its quote's first price
     */
    public static PlanCost of(PurchaseProblem problem, PurchasePlan plan) {
        List<OrderCost> orders = orders(problem, plan);
        BigDecimal holding = ZERO;
        BigDecimal credit = ZERO;
        for (int item = 0; item < problem.needs().size(); item++) {
            Need need = problem.needs().get(item);
            if (need.holdingPerUnit().signum() == 0 && need.creditPerUnit().signum() == 0) {
                continue;
            }
            Shelf shelf = Shelf.of(need, boughtPerPeriod(problem, plan, item));
            holding = holding.add(
                    shelf.closing().stream().reduce(ZERO, BigDecimal::add).multiply(need.holdingPerUnit()));
            credit = credit.add(shelf.leftFromPurchases().min(need.creditable()).multiply(need.creditPerUnit()));
        }
        return new PlanCost(orders, holding, credit);
    }

    /** What is bought of every item in each period, in its base unit. */
    static List<List<BigDecimal>> boughtPerPeriod(PurchaseProblem problem, PurchasePlan plan) {
        List<List<BigDecimal>> bought = new ArrayList<>();
        for (int item = 0; item < problem.needs().size(); item++) {
            bought.add(new ArrayList<>(Collections.nCopies(problem.periods(), ZERO)));
        }
        for (PurchasePlan.Line line : plan.lines()) {
            Quote quote = problem.quotes().get(line.quote());
            List<BigDecimal> ofItem = bought.get(quote.item());
            ofItem.set(line.period(), ofItem.get(line.period()).add(quote.quantity(line.packs())));
        }
        return bought;
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

    /** What leaves the bank for all orders, in home currency. */
    public BigDecimal outlay() {
        BigDecimal outlay = ZERO;
        for (OrderCost order : orders) {
            outlay = outlay.add(order.landed());
        }
        return outlay;
    }

    /** What leaves the bank for the orders of one period, in home currency. */
    public BigDecimal outlay(int period) {
        return orders.stream()
                .filter(order -> order.period() == period)
                .map(OrderCost::landed)
                .reduce(ZERO, BigDecimal::add);
    }

    /** What a planner makes as small as it can: landed cost and holding, less the credit for leftovers. */
    public BigDecimal objective() {
        return outlay().add(holding).subtract(credit);
    }

    /** All lines of all orders. */
    public List<LineCost> lines() {
        List<LineCost> lines = new ArrayList<>();
        for (OrderCost order : orders) {
            lines.addAll(order.lines());
        }
        return lines;
    }

    private static List<OrderCost> orders(PurchaseProblem problem, PurchasePlan plan) {
        List<OrderCost> orders = new ArrayList<>();
        List<PurchasePlan.Line> lines = plan.lines();
        int start = 0;
        for (int at = 1; at <= lines.size(); at++) {
            if (at == lines.size() || lines.get(at).period() != lines.get(start).period()) {
                addOrders(orders, problem, lines.subList(start, at));
                start = at;
            }
        }
        return orders;
    }

    /** Adds the orders of one period, vendor by vendor. */
    private static void addOrders(List<OrderCost> orders, PurchaseProblem problem, List<PurchasePlan.Line> lines) {
        List<@Nullable List<PurchasePlan.Line>> byVendor =
                new ArrayList<>(Collections.nCopies(problem.vendors().size(), null));
        for (PurchasePlan.Line line : lines) {
            int vendor = problem.quotes().get(line.quote()).vendor();
            List<PurchasePlan.Line> order = byVendor.get(vendor);
            if (order == null) {
                order = new ArrayList<>();
                byVendor.set(vendor, order);
            }
            order.add(line);
        }
        for (List<PurchasePlan.Line> order : byVendor) {
            if (order != null) {
                orders.add(OrderCosting.of(problem, order));
            }
        }
    }
}
