package perkilo.layouts;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Remarks that more costs less, but not how much: {@code ab 4 Fass billiger}, {@code volume discount on request}. */
final class UnpricedBreak {

    private static final Pattern FROM = Pattern.compile(
            "(?iu)(?<!\\p{L})(?:from|starting at|over|more than|ab|über|d[eè]s|[aà] partir de|plus de|a partire da|da|oltre|desde|más de)"
                    + "\\s+\\d[\\d.,'’]*\\s*(\\p{L}+)");

    private UnpricedBreak() {}

    /** Whether a text says that a price changes from a quantity on, or with the quantity, and names no sum of money. */
    static boolean is(String text) {
        if (CostText.saysMoney(text)) {
            return false;
        }
        if (ListWords.holds("cheaper", text)) {
            return true;
        }
        Matcher from = FROM.matcher(text);
        while (from.find()) {
            String unit = from.group(1);
            if (ListWords.is("container", unit) || Quantity.unit(unit).isPresent()) {
                return true;
            }
        }
        return false;
    }
}
