package perkilo.sheet;

import org.jspecify.annotations.Nullable;

/**
 * The format in which a number is shown.
 *
 * @param code in the language of number formats that office suites share
 */
public record NumberFormat(String code) {

    /** Whole numbers with separated thousands. */
    public static final NumberFormat WHOLE = new NumberFormat("#,##0");

    /** Quantities that may be small: up to three decimals. */
    public static final NumberFormat QUANTITY = new NumberFormat("#,##0.000");

    /** Factors and rates. */
    public static final NumberFormat FACTOR = new NumberFormat("#,##0.00000");

    /** Fractions as per cent with up to two decimals. */
    public static final NumberFormat PERCENT = new NumberFormat("0.00%");

    /** Days, year first. */
    public static final NumberFormat DATE = new NumberFormat("yyyy\\-mm\\-dd");

    /** Months, year first. */
    public static final NumberFormat MONTH = new NumberFormat("yyyy\\-mm");

    /** The general format: the office suite decides. */
    public static final NumberFormat GENERAL = new NumberFormat("General");

    /**
     * Amounts of money; zero is shown as a dash.
     *
     * @param currency ISO 4217 code, written after the number
     * @param decimals decimals shown
     */
    public static NumberFormat money(String currency, int decimals) {
        String number = decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
        String amount = number + "\\ \"" + currency + "\"";
        return new NumberFormat(amount + ";-" + amount + ";\"–\"");
    }

    /** Explicit: a generated equals and hashCode cost milliseconds at start-up (see engine/docs/measurements.md). */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof NumberFormat format && code.equals(format.code);
    }

    @Override
    public int hashCode() {
        return code.hashCode();
    }
}
