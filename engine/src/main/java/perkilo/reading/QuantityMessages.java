package perkilo.reading;

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
