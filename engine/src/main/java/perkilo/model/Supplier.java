package perkilo.model;

import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * A supplier and the charges on top of the goods. Amounts are in the supplier's currency.
 *
 * @param name as typed
 * @param currency of the supplier's invoices
 * @param terms the delivery term; null if none is given: then all charges apply
 * @param minimum the smallest order
 * @param charges what comes on top of the goods
 * @param leadTimeDays from order to arrival; null if unknown: then orders are planned as if delivered at once
 * @param origin the supplier's row
 */
public record Supplier(
        String name,
        CurrencyUnit currency,
        @Nullable DeliveryTerm terms,
        Minimum minimum,
        Charges charges,
        @Nullable Figure leadTimeDays,
        Origin origin) {

    /**
     * The smallest order.
     *
     * @param orderValue its goods value; null for none
     * @param smallOrderCharge what an order below it costs on top; null if such an order is not possible
     */
    public record Minimum(
            @Nullable Figure orderValue, @Nullable Figure smallOrderCharge) {}

    /**
     * What comes on top of the goods.
     *
     * @param freightPerOrder for each order
     * @param freightPerKg for each kilogram
     * @param insurance of the goods value, as a fraction
     * @param duty as a fraction; for offers without their own
     */
    public record Charges(Figure freightPerOrder, Figure freightPerKg, Figure insurance, Figure duty) {}

    /** A supplier of whom only the name and currency are known. */
    public static Supplier of(String name, CurrencyUnit currency) {
        return new Supplier(
                name,
                currency,
                null,
                new Supplier.Minimum(null, null),
                new Supplier.Charges(Figure.ZERO, Figure.ZERO, Figure.ZERO, Figure.ZERO),
                null,
                Origin.NONE);
    }

    /** {@link Minimum#orderValue}. */
    public @Nullable Figure minimumOrderValue() {
        return minimum.orderValue();
    }

    /** {@link Minimum#smallOrderCharge}. */
    public @Nullable Figure smallOrderCharge() {
        return minimum.smallOrderCharge();
    }

    /** {@link Charges#freightPerOrder}. */
    public Figure freightPerOrder() {
        return charges.freightPerOrder();
    }

    /** {@link Charges#freightPerKg}. */
    public Figure freightPerKg() {
        return charges.freightPerKg();
    }

    /** {@link Charges#insurance}. */
    public Figure insurance() {
        return charges.insurance();
    }

    /** {@link Charges#duty}. */
    public Figure duty() {
        return charges.duty();
    }
}
