package perkilo.purchasing;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

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
        TreeMap<Integer, TreeMap<Integer, List<PurchasePlan.Line>>> byOrder = new TreeMap<>();
        for (PurchasePlan.Line line : plan.lines()) {
            byOrder.computeIfAbsent(line.period(), period -> new TreeMap<>())
                    .computeIfAbsent(problem.quotes().get(line.quote()).vendor(), vendor -> new ArrayList<>())
                    .add(line);
        }
        List<OrderCost> orders = new ArrayList<>();
        byOrder.forEach((period, vendors) ->
                vendors.forEach((vendor, lines) -> orders.add(order(problem, vendor, period, lines))));
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
        return orders.stream().map(OrderCost::landed).reduce(ZERO, BigDecimal::add);
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
        return orders.stream().flatMap(order -> order.lines().stream()).toList();
    }

    private static OrderCost order(
            PurchaseProblem problem, int vendorIndex, int period, List<PurchasePlan.Line> lines) {
        Vendor vendor = problem.vendors().get(vendorIndex);
        List<Draft> drafts =
                lines.stream().map(line -> draft(problem, vendor, line)).toList();
        BigDecimal goods = drafts.stream().map(Draft::goodsInvoiced).reduce(ZERO, BigDecimal::add);
        boolean small = goods.compareTo(vendor.minimumOrderValue()) < 0;
        BigDecimal small0 = vendor.smallOrderCharge();
        BigDecimal smallOrder = small && small0 != null ? small0 : ZERO;
        BigDecimal kg = drafts.stream().map(Draft::kg).reduce(ZERO, BigDecimal::add);
        BigDecimal freight = vendor.freightPerOrder().add(vendor.freightPerKg().multiply(kg));
        BigDecimal dutiableCharges =
                vendor.dutyBasis() == DutyBasis.CIF ? vendor.freightPerOrder().add(smallOrder) : smallOrder;
        BigDecimal dutyOnCharges = vendor.duty().multiply(dutiableCharges);
        BigDecimal duty = drafts.stream().map(Draft::duty).reduce(dutyOnCharges, BigDecimal::add);

        BigDecimal forTheOrder = vendor.freightPerOrder()
                .add(smallOrder)
                .multiply(ONE.add(vendor.margin()))
                .add(dutyOnCharges)
                .multiply(vendor.toHome());
        List<LineCost> costed = share(vendor, drafts, goods, forTheOrder);
        return new OrderCost(
                vendorIndex,
                period,
                costed,
                goods,
                smallOrder,
                vendor.insurance().multiply(goods),
                freight,
                duty,
                costed.stream().map(LineCost::landed).reduce(ZERO, BigDecimal::add));
    }

    private static Draft draft(PurchaseProblem problem, Vendor vendor, PurchasePlan.Line line) {
        Quote quote = problem.quotes().get(line.quote());
        BigDecimal quoted = quote.goods(line.packs());
        BigDecimal goods = quoted.multiply(quote.toVendorCurrency());
        BigDecimal kg = quote.kgPerPack().multiply(BigDecimal.valueOf(line.packs()));
        BigDecimal insured = goods.multiply(ONE.add(vendor.insurance()));
        BigDecimal freight = vendor.freightPerKg().multiply(kg);
        BigDecimal dutiable = vendor.dutyBasis() == DutyBasis.CIF ? insured.add(freight) : goods;
        BigDecimal duty = quote.duty().multiply(dutiable);
        BigDecimal landed = insured.add(freight)
                .multiply(ONE.add(vendor.margin()))
                .add(duty)
                .multiply(vendor.toHome());
        return new Draft(
                line, quote.tierFor(line.packs()), quote.quantity(line.packs()), kg, quoted, goods, duty, landed);
    }

    /**
     * Shares what is charged for the order by goods value (by line where the goods are free); the last line takes the
     * rest.
     */
    private static List<LineCost> share(Vendor vendor, List<Draft> drafts, BigDecimal goods, BigDecimal forTheOrder) {
        List<LineCost> lines = new ArrayList<>();
        BigDecimal left = forTheOrder;
        for (int i = 0; i < drafts.size(); i++) {
            Draft draft = drafts.get(i);
            boolean last = i == drafts.size() - 1;
            BigDecimal weight = goods.signum() == 0 ? ONE : draft.goodsInvoiced();
            BigDecimal whole = goods.signum() == 0 ? BigDecimal.valueOf(drafts.size()) : goods;
            BigDecimal part = last ? left : forTheOrder.multiply(weight).divide(whole, MathContext.DECIMAL128);
            left = left.subtract(part);
            lines.add(new LineCost(
                    draft.line(),
                    draft.tier(),
                    draft.quantity(),
                    draft.kg(),
                    draft.goodsQuoted(),
                    draft.goodsInvoiced(),
                    draft.goodsInvoiced().multiply(vendor.toHome()),
                    draft.landed().add(part)));
        }
        return lines;
    }

    private record Draft(
            PurchasePlan.Line line,
            int tier,
            BigDecimal quantity,
            BigDecimal kg,
            BigDecimal goodsQuoted,
            BigDecimal goodsInvoiced,
            BigDecimal duty,
            BigDecimal landed) {}
}
