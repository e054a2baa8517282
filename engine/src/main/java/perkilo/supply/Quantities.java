package perkilo.supply;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Quantities and amounts in sentences. */
final class Quantities {

    private Quantities() {}

    /** A quantity of an item as a person says it: {@code 12.5 kg}, {@code 2,040 pieces}. */
    static String of(BigDecimal quantity, HorizonItem item) {
        return item.item().isMaterial()
                ? kilograms(quantity)
                : String.format(Locale.ROOT, "%,d pieces", quantity.toBigInteger());
    }

    /** An amount with two decimals: {@code 8,430.00}. */
    static String amount(BigDecimal amount) {
        return String.format(Locale.ROOT, "%,.2f", amount.setScale(2, RoundingMode.HALF_UP));
    }

    private static String kilograms(BigDecimal quantity) {
        BigDecimal shortest = quantity.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return String.format(Locale.ROOT, "%,.3f", shortest).replaceAll("\\.?0+$", "") + " kg";
    }
}
