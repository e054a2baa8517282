package perkilo.orderplan;

import java.math.BigDecimal;
import java.util.List;
import perkilo.costing.Item;
import perkilo.origin.Decimals;

/** Quantities, amounts and names in sentences. */
final class Quantities {

    private Quantities() {}

    /** A quantity of an item with its unit: {@code 12.5 kg}, {@code 2,040 pieces}. */
    static String of(BigDecimal quantity, Item item) {
        return item.isMaterial() ? Decimals.readable(quantity, 3) + " kg" : Decimals.readable(quantity, 0) + " pieces";
    }

    /** An amount with two decimals: {@code 8,430.00}. */
    static String amount(BigDecimal amount) {
        return Decimals.amount(amount, 2);
    }

    /** Names in quotes, with commas between them. */
    static String quoted(List<String> names) {
        return "\"" + String.join("\", \"", names) + "\"";
    }
}
