package perkilo.purchasing;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/**
 * The cost of one order to one vendor. Amounts are in the vendor's currency unless the name says otherwise.
 *
 * @param vendor index into the problem's vendors
 * @param period from zero
 * @param terms of the vendor
 * @param lines at least one
 * @param smallOrderCharge for goods below the minimum order value; zero otherwise
 * @param dutyOnCharges each line's duty on its share of freight per order and small-order charge
 * @param landed everything, with the bank's margin, in home currency; the sum of the lines'
 */
public record OrderCost(
        int vendor,
        int period,
        Vendor terms,
        List<LineCost> lines,
        BigDecimal smallOrderCharge,
        BigDecimal dutyOnCharges,
        BigDecimal landed) {

    public OrderCost {
        lines = List.copyOf(lines);
    }

    /** The invoiced value of all lines. */
    public BigDecimal goods() {
        return sum(OwnCost::goodsInvoiced);
    }

    /** Insurance on the goods. */
    public BigDecimal insurance() {
        return terms.insurance().multiply(goods());
    }

    /** Freight for the order and by weight. */
    public BigDecimal freight() {
        return terms.freightPerOrder().add(terms.freightPerKg().multiply(sum(OwnCost::kg)));
    }

    /** Duty by line, and on freight per order and small-order charge. */
    public BigDecimal duty() {
        return sum(OwnCost::duty).add(dutyOnCharges);
    }

    /** The invoices of vendor and haulier, before duty and without the bank's margin. */
    public BigDecimal charges() {
        return smallOrderCharge.add(insurance()).add(freight());
    }

    /** The duty in home currency. */
    public BigDecimal dutyHome() {
        return duty().multiply(terms.toHome());
    }

    /** A payment for it, in home currency. */
    public BigDecimal paid(Payments.Part part) {
        if (part.invoiced().compareTo(part.duty()) == 0) {
            return landed.multiply(part.invoiced());
        }
        BigDecimal duty = dutyHome();
        return landed.subtract(duty).multiply(part.invoiced()).add(duty.multiply(part.duty()));
    }

    /** Whether the vendor refuses an order this small. */
    public boolean isRefused() {
        return terms.refusesSmallOrders() && goods().compareTo(terms.minimumOrderValue()) < 0;
    }

    private BigDecimal sum(Function<OwnCost, BigDecimal> amount) {
        BigDecimal sum = ZERO;
        for (LineCost line : lines) {
            sum = sum.add(amount.apply(line.own()));
        }
        return sum;
    }
}
