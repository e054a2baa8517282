package perkilo.report.send;

import java.math.BigDecimal;
import perkilo.model.Supplier;
import perkilo.origin.Counted;
import perkilo.origin.Decimals;

/** Terms of payment in words. */
final class PaymentWords {

    private static final int PERCENT_DIGITS = 2;

    private PaymentWords() {}

    /**
     * The terms as they were typed, else in words made of the prepaid part and the days; blank if nothing is stated.
     */
    static String of(Supplier.Payment payment) {
        if (!payment.terms().isEmpty() || !payment.isKnown()) {
            return payment.terms();
        }
        BigDecimal prepaid = payment.prepaidPart();
        String rest = payment.daysAfterArrival() == 0
                ? "on delivery"
                : Counted.of(payment.daysAfterArrival(), "day") + " after delivery";
        if (prepaid.signum() == 0) {
            return "Payment " + rest;
        }
        String percent = Decimals.readable(prepaid.movePointRight(2).stripTrailingZeros(), PERCENT_DIGITS);
        return prepaid.compareTo(BigDecimal.ONE) == 0
                ? "Payment with the order"
                : percent + " % with the order, the rest " + rest;
    }
}
