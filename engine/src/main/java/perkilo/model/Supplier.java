package perkilo.model;

import java.math.BigDecimal;
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
 * @param payment when an order is paid
 * @param details what a purchase order to them says besides
 * @param origin the supplier's row
 */
public record Supplier(
        String name,
        CurrencyUnit currency,
        @Nullable DeliveryTerm terms,
        Minimum minimum,
        Charges charges,
        @Nullable Figure leadTimeDays,
        Payment payment,
        Details details,
        Origin origin) {

    /** A supplier of whom a purchase order can say no more than the name. */
    public Supplier(
            String name,
            CurrencyUnit currency,
            @Nullable DeliveryTerm terms,
            Minimum minimum,
            Charges charges,
            @Nullable Figure leadTimeDays,
            Origin origin) {
        this(name, currency, terms, minimum, charges, leadTimeDays, Payment.UNKNOWN, Details.UNKNOWN, origin);
    }

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

    /**
     * When the goods and charges of an order are paid. The prepaid part is paid on the day of the order, the rest a
     * number of days after the goods arrive. If neither is known, everything counts on the day of the order.
     *
     * @param terms in words, as a purchase order prints them; blank if not stated
     * @param days from arrival to payment, zero or more; null if not stated
     * @param prepaid the part paid with the order, as a fraction from 0 to 1; null if not stated
     */
    public record Payment(
            String terms, @Nullable Figure days, @Nullable Figure prepaid) {

        /** Nothing is stated. */
        public static final Payment UNKNOWN = new Payment("", null, null);

        /** Whether the days of payment can be computed. */
        public boolean isKnown() {
            return days != null || prepaid != null;
        }

        /** The part paid on the day of the order, as a fraction: 1 if nothing is stated, 0 if only the days are. */
        public BigDecimal prepaidPart() {
            if (prepaid != null) {
                return prepaid.value();
            }
            return days == null ? BigDecimal.ONE : BigDecimal.ZERO;
        }

        /** The days from arrival to the payment of the rest; 0 if they are not stated. */
        public int daysAfterArrival() {
            return days == null ? 0 : days.value().intValueExact();
        }
    }

    /**
     * What a purchase order says besides. A text may have several lines; blank means that it is not known.
     *
     * @param deliveryTerms the delivery term with its place, as typed
     * @param address of the supplier
     * @param contact the person who takes orders
     * @param email where orders go
     * @param ourNumber the buyer's number at this supplier
     */
    public record Details(String deliveryTerms, String address, String contact, String email, String ourNumber) {

        /** Nothing is known. */
        public static final Details UNKNOWN = new Details("", "", "", "", "");

        /** The same with other delivery terms. */
        public Details withDeliveryTerms(String other) {
            return new Details(other, address, contact, email, ourNumber);
        }
    }

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

    /** The same supplier with other charges. */
    public Supplier with(Charges others) {
        return new Supplier(name, currency, terms, minimum, others, leadTimeDays, payment, details, origin);
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
