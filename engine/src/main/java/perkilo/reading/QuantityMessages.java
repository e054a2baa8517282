package perkilo.reading;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Decimals;
import perkilo.units.Measure;

/** What a person reads about units and currencies that do not fit their column, and about rates that look too low. */
final class QuantityMessages {

    private QuantityMessages() {}

    // units

    static String noUnit(String unitColumn) {
        return unitColumn + " is missing. Type a unit such as kg, L or each.";
    }

    static String twoUnits(String column, String unit, String unitColumn, String typed) {
        return column + " is in " + unit + ", but " + unitColumn + " says " + typed + ". Correct one of them.";
    }

    static String otherUnit(String column, String unit, String expected) {
        return column + " is in " + unit + ". Type it in " + expected + ".";
    }

    /**
     * A gallon of which the row does not say whose.
     *
     * @param amount how many; null if it is not known
     * @param others other columns of the row that say the same
     */
    static String whichGallon(String column, String text, @Nullable BigDecimal amount, List<String> others) {
        String litres = amount == null
                ? ""
                : " " + Decimals.readable(amount, 3) + " gal = " + litres(amount, Measure.US_GAL) + " (US) or "
                        + litres(amount, Measure.IMP_GAL) + " (imperial).";
        String also = others.isEmpty() ? "" : " Do the same in " + String.join(" and ", others) + ".";
        return column + " says \"" + text + "\": a US gallon (" + Measure.US_GAL.inBase()
                + " L) or an imperial gallon ("
                + Measure.IMP_GAL.inBase() + " L)?" + litres + " Type " + Measure.US_GAL.symbol() + " or "
                + Measure.IMP_GAL.symbol() + "." + also;
    }

    static String gallonOfSupplier(String question, String supplier, String currency) {
        return question + " The US gallon is assumed only of a supplier who invoices in USD; " + supplier
                + " invoices in " + currency + ".";
    }

    private static String litres(BigDecimal gallons, Measure gallon) {
        return Decimals.readable(gallons.multiply(gallon.inBase()), 3) + " L";
    }

    // amounts of money

    static String otherCurrency(String column, String sign, String expected) {
        return column + " is in " + sign + ". Type it in " + expected + ".";
    }

    static String otherFormat(String column, String sign, String expected) {
        return column + " is formatted in " + sign + ", but is taken to be in " + expected
                + ". The number format is ignored.";
    }

    static String notPerKg(String column, String per) {
        return column + " is per " + per + ". Type the amount per kg.";
    }

    static String per(String column, String per) {
        return column + " is per " + per + ". Type an amount that is not per " + per + ".";
    }

    // percentages

    static String fraction(String column, String read, String meant) {
        return column + " is " + read + ", which means " + read + " %. For " + meant + " %, type " + meant
                + " or format the cell as a percentage.";
    }
}
