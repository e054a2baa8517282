package perkilo.reading.table;

import java.math.BigDecimal;
import java.time.LocalDate;
import perkilo.origin.Counted;

/** What a person reads about one cell whose value cannot be used; each message begins with the column's header. */
public final class CellMessages {

    private static final String DATE_HELP = " Type it as year-month-day, such as 2027-01-31.";

    private CellMessages() {}

    // any cell

    static String fault(String column, String fault) {
        return column + " is " + fault + ".";
    }

    static String blank(String column, String expected, String example) {
        return column + " is missing. Type " + expected + ", such as " + example + ".";
    }

    // numbers

    static String notANumber(String column, String text, String expected, String example) {
        return quoted(column, text) + ", which is not " + expected + (expected.endsWith(".") ? "" : ".")
                + " Type the figure alone, such as " + example + ".";
    }

    static String twoNumbers(String column, String text, BigDecimal one, BigDecimal other) {
        return quoted(column, text) + ", which can mean " + one.toPlainString() + " or " + other.toPlainString()
                + ". Type the one that you mean.";
    }

    static String alsoOthers(String message, int others) {
        return message + " The same holds for " + Counted.of(others, "more cell") + " of the column.";
    }

    static String dateForNumber(String column, String date) {
        return column + " is the date " + date + ". Format the cell as a number, and type the number again.";
    }

    static String percentage(String column, String expected) {
        return column + " is a percentage. Type " + expected + " instead.";
    }

    static String notAPercentage(String column, String text) {
        return quoted(column, text) + ", which is not a percentage. Type a percentage instead.";
    }

    static String notWhole(String column, String shown) {
        return column + " is " + shown + ". It must be a whole number.";
    }

    static String outside(String column, String shown, String limits) {
        return column + " is " + shown + ". It must be " + limits + ".";
    }

    // units and currencies

    static String unknownWords(String column, String text, String words, String expected, String example) {
        return quoted(column, text) + ", but \"" + words + "\" is not recognised. Type " + expected + ", such as "
                + example + ".";
    }

    static String otherUnit(String column, String unit, String expected) {
        return column + " is in \"" + unit + "\". Type it in " + expected + ".";
    }

    static String otherFormat(String column, String shown, String header) {
        return column + " is shown in \"" + shown + "\" by its number format, but its header says \"" + header
                + "\". Correct one of them.";
    }

    static String notAUnit(String column, String text) {
        return quoted(column, text) + ", which is not a known unit. Use kg, g, lb, oz, L, mL, US gal, imp gal or each.";
    }

    static String notACurrency(String column, String text) {
        return quoted(column, text) + ", which is not a known currency. Type an ISO 4217 code such as EUR.";
    }

    /** Several currencies share a sign, and nothing shows which one is meant. */
    public static String sharedSign(String column, String sign, String code) {
        return quoted(column, sign) + ", a sign of several currencies. Type an ISO 4217 code such as " + code + ".";
    }

    // dates

    /** A text is not a date. */
    public static String notADate(String column, String text) {
        return quoted(column, text) + ", which is not a date." + DATE_HELP;
    }

    static String twoDates(String column, String text, LocalDate one, LocalDate other) {
        return quoted(column, text) + ", which can mean " + one + " or " + other + ". Type the one that you mean.";
    }

    private static String quoted(String column, String text) {
        return column + " is \"" + text + "\"";
    }
}
