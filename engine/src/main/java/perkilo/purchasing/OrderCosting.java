package perkilo.purchasing;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;
import static perkilo.purchasing.OwnCost.times;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** Costs one order to one vendor, by the formulas in {@link PlanCost}. */
final class OrderCosting {

    private final int index;
    private final Vendor vendor;
    private final List<LineCost> lines = new ArrayList<>();
    private BigDecimal landed = ZERO;

    /**
     * An order without lines.
     *
     * @param index of the vendor
     * @param vendor who gets the order
     */
    OrderCosting(int index, Vendor vendor) {
        this.index = index;
        this.vendor = vendor;
    }

    void add(PurchasePlan.Line line, OwnCost cost) {
        lines.add(new LineCost(line, cost, ZERO, vendor.toHome()));
        landed = lines.size() == 1 ? cost.landed() : landed.add(cost.landed());
    }

    /** The cost of the order, which has at least one line. */
    OrderCost order() {
        BigDecimal smallOrder = smallOrderCharge();
        BigDecimal charges = landedCharges(smallOrder);
        boolean free = charges.signum() == 0;
        return new OrderCost(
                index,
                lines.get(0).line().period(),
                vendor,
                free ? lines : shared(charges),
                smallOrder,
                times(free ? landed : landed.add(charges), vendor.toHome()));
    }

    private BigDecimal smallOrderCharge() {
        BigDecimal charge = vendor.smallOrderCharge();
        return charge != null && goods().compareTo(vendor.minimumOrderValue()) < 0 ? charge : ZERO;
    }

    private BigDecimal goods() {
        BigDecimal goods = ZERO;
        for (LineCost line : lines) {
            goods = goods.add(line.goodsInvoiced());
        }
        return goods;
    }

    /** The charges for the whole order, with margin and duty. */
    private BigDecimal landedCharges(BigDecimal smallOrder) {
        BigDecimal charges = vendor.freightPerOrder().add(smallOrder);
        return charges.signum() == 0
                ? ZERO
                : charges.multiply(ONE.add(vendor.margin())).add(vendor.dutyOnCharges(smallOrder));
    }

    /**
     * Divides the charges for the order by goods value (equally if the goods are free); the last line takes the rest.
     */
    private List<LineCost> shared(BigDecimal charges) {
        BigDecimal goods = goods();
        List<LineCost> shared = new ArrayList<>(lines.size());
        BigDecimal left = charges;
        for (LineCost line : lines.subList(0, lines.size() - 1)) {
            BigDecimal part = goods.signum() == 0
                    ? charges.divide(BigDecimal.valueOf(lines.size()), MathContext.DECIMAL128)
                    : charges.multiply(line.goodsInvoiced()).divide(goods, MathContext.DECIMAL128);
            left = left.subtract(part);
            shared.add(line.withShare(part));
        }
        shared.add(lines.get(lines.size() - 1).withShare(left));
        return shared;
    }
}
