package perkilo.purchasing;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** Costs one order to one vendor, by the formulas that {@link PlanCost} states. */
final class OrderCosting {

    private final PurchaseProblem problem;
    private final Vendor vendor;
    private final BigDecimal withInsurance;
    private final BigDecimal withMargin;
    private final List<Draft> drafts = new ArrayList<>();
    private BigDecimal goods = ZERO;
    private BigDecimal kg = ZERO;
    private BigDecimal duty = ZERO;

    private OrderCosting(PurchaseProblem problem, Vendor vendor) {
        this.problem = problem;
        this.vendor = vendor;
        this.withInsurance = ONE.add(vendor.insurance());
        this.withMargin = ONE.add(vendor.margin());
    }

    /**
     * Costs an order.
     *
     * @param lines of one vendor and period, at least one
     */
    static OrderCost of(PurchaseProblem problem, List<PurchasePlan.Line> lines) {
        PurchasePlan.Line first = lines.get(0);
        int index = problem.quotes().get(first.quote()).vendor();
        OrderCosting costing = new OrderCosting(problem, problem.vendors().get(index));
        for (PurchasePlan.Line line : lines) {
            costing.add(line);
        }
        return costing.order(index, first.period());
    }

    private record Draft(
            PurchasePlan.Line line,
            int tier,
            BigDecimal quantity,
            BigDecimal kg,
            BigDecimal goodsQuoted,
            BigDecimal goodsInvoiced,
            BigDecimal landed) {}

    private void add(PurchasePlan.Line line) {
        Quote quote = problem.quotes().get(line.quote());
        int tier = quote.tierFor(line.packs());
        BigDecimal quoted = quote.goodsAt(tier, line.packs());
        BigDecimal invoiced = times(quoted, quote.toVendorCurrency());
        BigDecimal weight = quote.kgPerPack().multiply(BigDecimal.valueOf(line.packs()));
        BigDecimal insured = times(invoiced, withInsurance);
        BigDecimal freight = vendor.freightPerKg().multiply(weight);
        BigDecimal dutiable = vendor.dutyBasis() == DutyBasis.CIF ? insured.add(freight) : invoiced;
        BigDecimal dutyOnLine = quote.duty().multiply(dutiable);
        BigDecimal landed = times(times(insured.add(freight), withMargin).add(dutyOnLine), vendor.toHome());
        drafts.add(new Draft(line, tier, quote.quantity(line.packs()), weight, quoted, invoiced, landed));
        goods = goods.add(invoiced);
        kg = kg.add(weight);
        duty = duty.add(dutyOnLine);
    }

    private OrderCost order(int index, int period) {
        BigDecimal charge = vendor.smallOrderCharge();
        BigDecimal smallOrder = charge != null && goods.compareTo(vendor.minimumOrderValue()) < 0 ? charge : ZERO;
        BigDecimal charges = vendor.freightPerOrder().add(smallOrder);
        BigDecimal dutyOnCharges = vendor.duty().multiply(vendor.dutyBasis() == DutyBasis.CIF ? charges : smallOrder);
        List<LineCost> lines =
                share(charges.multiply(withMargin).add(dutyOnCharges).multiply(vendor.toHome()));
        BigDecimal landed = ZERO;
        for (LineCost line : lines) {
            landed = landed.add(line.landed());
        }
        return new OrderCost(
                index,
                period,
                lines,
                goods,
                smallOrder,
                vendor.insurance().multiply(goods),
                vendor.freightPerOrder().add(vendor.freightPerKg().multiply(kg)),
                duty.add(dutyOnCharges),
                landed);
    }

    /**
     * Shares what is charged for the order by goods value (by line where the goods are free); the last line takes the
     * rest.
     */
    private List<LineCost> share(BigDecimal forTheOrder) {
        List<LineCost> lines = new ArrayList<>(drafts.size());
        BigDecimal left = forTheOrder;
        for (Draft draft : drafts) {
            boolean last = lines.size() == drafts.size() - 1;
            BigDecimal part = last ? left : part(forTheOrder, draft);
            left = left.subtract(part);
            lines.add(cost(draft, part));
        }
        return lines;
    }

    private BigDecimal part(BigDecimal forTheOrder, Draft draft) {
        if (forTheOrder.signum() == 0) {
            return ZERO;
        }
        return goods.signum() == 0
                ? forTheOrder.divide(BigDecimal.valueOf(drafts.size()), MathContext.DECIMAL128)
                : forTheOrder.multiply(draft.goodsInvoiced()).divide(goods, MathContext.DECIMAL128);
    }

    private LineCost cost(Draft draft, BigDecimal part) {
        return new LineCost(
                draft.line(),
                draft.tier(),
                draft.quantity(),
                draft.kg(),
                draft.goodsQuoted(),
                draft.goodsInvoiced(),
                times(draft.goodsInvoiced(), vendor.toHome()),
                part.signum() == 0 ? draft.landed() : draft.landed().add(part));
    }

    /** The product; a factor of one, as most are, takes no arithmetic. */
    private static BigDecimal times(BigDecimal amount, BigDecimal factor) {
        return factor.compareTo(ONE) == 0 ? amount : amount.multiply(factor);
    }
}
