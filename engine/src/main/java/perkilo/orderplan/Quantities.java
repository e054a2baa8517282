package perkilo.orderplan;

import java.math.BigDecimal;
import perkilo.origin.Decimals;

/** Quantities and amounts in sentences. */
final class Quantities {

    private Quantities() {}

    /** A quantity of an item as a person says it: {@code 12.5 kg}, {@code 2,040 pieces}. */
    static String of(BigDecimal quantity, HorizonItem item) {
        return item.item().isMaterial()
                ? Decimals.readable(quantity, 3) + " kg"
                : Decimals.readable(quantity, 0) + " pieces";
    }

    /** An amount with two decimals: {@code 8,430.00}. */
    static String amount(BigDecimal amount) {
        return Decimals.amount(amount, 2);
    }
}
