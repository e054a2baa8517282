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
 * @param minimumOrderValue goods value of the smallest order; null for none
 * @param smallOrderCharge what an order below the minimum costs on top; null if such an order is not possible
 * @param freightPerOrder for each order
 * @param freightPerKg for each kilogram
 * @param insurance of the goods value, as a fraction
 * @param duty as a fraction; for offers without their own
 * @param leadTimeDays from order to arrival; null if unknown: then orders are planned as if delivered at once
 * @param origin the supplier's row
 */
public record Supplier(
        String name,
        CurrencyUnit currency,
        @Nullable DeliveryTerm terms,
        @Nullable Figure minimumOrderValue,
        @Nullable Figure smallOrderCharge,
        Figure freightPerOrder,
        Figure freightPerKg,
        Figure insurance,
        Figure duty,
        @Nullable Figure leadTimeDays,
        Origin origin) {

    /** A supplier of whom only the name and currency are known. */
    public static Supplier of(String name, CurrencyUnit currency) {
        return new Supplier(
                name,
                currency,
                null,
                null,
                null,
                Figure.ZERO,
                Figure.ZERO,
                Figure.ZERO,
                Figure.ZERO,
                null,
                Origin.NONE);
    }
}
