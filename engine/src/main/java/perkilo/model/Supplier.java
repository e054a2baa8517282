package perkilo.model;

import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * Who sells, and what comes on top of the goods. Amounts are in the supplier's currency.
 *
 * @param name as typed
 * @param currency what the supplier invoices in
 * @param terms the delivery term; null where none is given: then the charges are taken as they stand
 * @param minimumOrderValue goods value of the smallest order; null for none
 * @param smallOrderCharge what an order below the minimum costs on top; null where such an order is not possible
 * @param freightPerOrder for each order
 * @param freightPerKg for each kilogram
 * @param insurance of the goods value, as a fraction
 * @param duty as a fraction; holds for offers that name none of their own
 * @param leadTimeDays from order to arrival; null where not known: then orders are planned as if delivered at once
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

    /** A supplier of whom only the name and the currency are known. */
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
