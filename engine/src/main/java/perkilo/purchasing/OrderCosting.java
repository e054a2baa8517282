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
        BigDecimal charges = vendor.freightPerOrder().add(smallOrder);
        boolean free = charges.signum() == 0;
        BigDecimal duty = free ? ZERO : dutyOnCharges(vendor.dutiableCharges(smallOrder));
        BigDecimal paid = times(charges, ONE.add(vendor.margin()));
        return new OrderCost(
                index,
                lines.get(0).line().period(),
                vendor,
                free ? lines : shared(paid, vendor.dutiableCharges(smallOrder), paid.add(duty)),
                smallOrder,
                duty,
                times(free ? landed : landed.add(paid).add(duty), vendor.toHome()));
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

    /** Each line's own rate on its share of the dutiable charges; exact where all lines have one rate. */
    private BigDecimal dutyOnCharges(BigDecimal dutiable) {
        BigDecimal first = lines.get(0).own().dutyRate();
        boolean isMixed = false;
        BigDecimal weighted = ZERO;
        BigDecimal rates = ZERO;
        for (LineCost line : lines) {
            BigDecimal rate = line.own().dutyRate();
            isMixed |= rate.compareTo(first) != 0;
            weighted = weighted.add(rate.multiply(line.goodsInvoiced()));
            rates = rates.add(rate);
        }
        if (!isMixed) {
            return dutiable.multiply(first);
        }
        BigDecimal goods = goods();
        return goods.signum() == 0
                ? dutiable.multiply(rates).divide(BigDecimal.valueOf(lines.size()), MathContext.DECIMAL128)
                : dutiable.multiply(weighted).divide(goods, MathContext.DECIMAL128);
    }

    /**
     * Divides the charges for the order by goods value (equally if the goods are free), with each line's duty on its
     * share; the last line takes the rest.
     *
     * @param paid the charges with the bank's margin
     * @param dutiable what duty is charged on
     * @param all the charges with margin and duty
     */
    private List<LineCost> shared(BigDecimal paid, BigDecimal dutiable, BigDecimal all) {
        BigDecimal goods = goods();
        List<LineCost> shared = new ArrayList<>(lines.size());
        BigDecimal left = all;
        for (LineCost line : lines.subList(0, lines.size() - 1)) {
            BigDecimal charges = paid.add(dutiable.multiply(line.own().dutyRate()));
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
