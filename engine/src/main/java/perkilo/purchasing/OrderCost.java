package perkilo.purchasing;

import java.math.BigDecimal;
import java.util.List;

/**
 * What one order to one vendor costs. Amounts are in the vendor's currency unless the name says otherwise.
 *
 * @param vendor index into the problem's vendors
 * @param period from zero
 * @param lines at least one
 * @param goods what is invoiced for all lines
 * @param smallOrderCharge for goods below the minimum order value; zero otherwise
 * @param insurance on the goods
 * @param freight for the order and by weight
 * @param duty by line, and on freight per order and small-order charge
 * @param landed everything, with the bank's margin, in home currency; the sum of the lines'
 */
public record OrderCost(
        int vendor,
        int period,
        List<LineCost> lines,
        BigDecimal goods,
        BigDecimal smallOrderCharge,
        BigDecimal insurance,
        BigDecimal freight,
        BigDecimal duty,
        BigDecimal landed) {

    public OrderCost {
        lines = List.copyOf(lines);
    }

    /** What the vendor's invoice and the haulier's come to, before duty and without the bank's margin. */
    public BigDecimal charges() {
        return smallOrderCharge.add(insurance).add(freight);
    }
}
