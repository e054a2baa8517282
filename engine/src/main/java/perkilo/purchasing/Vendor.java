package perkilo.purchasing;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The charges of one supplier's orders. Amounts are in the supplier's currency, rates are fractions (0.065 for 6.5 %).
 *
 * @param name the supplier's name
 * @param toHome home currency for one unit of the supplier's currency
 * @param margin the bank's margin on a conversion; zero if the supplier invoices in home currency
 * @param freightPerOrder for each order, whatever its size
 * @param freightPerKg for each kilogram
 * @param insurance of the goods value
 * @param minimumOrderValue goods below this are charged, or not delivered; zero for no minimum
 * @param smallOrderCharge what an order below the minimum costs on top; null if such an order is not possible
 * @param dutyBasis what duty is charged on
 */
public record Vendor(
        String name,
        BigDecimal toHome,
        BigDecimal margin,
        BigDecimal freightPerOrder,
        BigDecimal freightPerKg,
        BigDecimal insurance,
        BigDecimal minimumOrderValue,
        @Nullable BigDecimal smallOrderCharge,
        DutyBasis dutyBasis) {

    public Vendor {
        requireNonNull(name, "name");
        requireNonNull(dutyBasis, "dutyBasis");
        if (toHome.signum() <= 0) {
            throw new IllegalArgumentException("toHome must be above zero, but was " + toHome.toPlainString());
        }
        if (margin.signum() < 0
                || freightPerOrder.signum() < 0
                || freightPerKg.signum() < 0
                || insurance.signum() < 0
                || minimumOrderValue.signum() < 0
                || (smallOrderCharge != null && smallOrderCharge.signum() < 0)) {
            throw new IllegalArgumentException("the charges of " + name + " must be zero or more");
        }
    }

    /** The same vendor without charges for a whole order and without a minimum. */
    public Vendor withoutOrderCharges() {
        return new Vendor(
                name, toHome, margin, BigDecimal.ZERO, freightPerKg, insurance, BigDecimal.ZERO, null, dutyBasis);
    }

    /** Whether an order below the minimum order value is refused instead of charged. */
    public boolean refusesSmallOrders() {
        return smallOrderCharge == null && minimumOrderValue.signum() > 0;
    }

    /** Price of one unit of the supplier's currency in home currency, with the bank's margin. */
    public BigDecimal toHomeWithMargin() {
        return toHome.multiply(BigDecimal.ONE.add(margin));
    }

    /**
     * Cost of opening an order in home currency, with the duty on it, before any goods.
     *
     * @param duty the average rate of the order's lines
     */
    public BigDecimal openingCost(BigDecimal duty) {
        return landedCharge(freightPerOrder, dutyBasis == DutyBasis.CIF ? duty : BigDecimal.ZERO);
    }

    /**
     * Extra cost of an order below the minimum in home currency, with the duty on it; zero if there is no charge.
     *
     * @param duty the average rate of the order's lines
     */
    public BigDecimal smallOrderCost(BigDecimal duty) {
        return smallOrderCharge == null ? BigDecimal.ZERO : landedCharge(smallOrderCharge, duty);
    }

    /** Whether the duty on an order's charges depends on which lines it holds. */
    public boolean hasMixedDutyOnCharges(DutySpread rates) {
        boolean onFreight = dutyBasis == DutyBasis.CIF && freightPerOrder.signum() > 0;
        boolean onSmall = smallOrderCharge != null && smallOrderCharge.signum() > 0 && minimumOrderValue.signum() > 0;
        return rates.isMixed() && (onFreight || onSmall);
    }

    /** The part of an order's charges that duty is charged on, in the vendor's currency. */
    public BigDecimal dutiableCharges(BigDecimal smallOrder) {
        return dutyBasis == DutyBasis.CIF ? freightPerOrder.add(smallOrder) : smallOrder;
    }

    private BigDecimal landedCharge(BigDecimal charge, BigDecimal duty) {
        return charge.multiply(BigDecimal.ONE.add(margin).add(duty)).multiply(toHome);
    }
}
