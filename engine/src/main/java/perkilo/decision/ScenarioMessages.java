package perkilo.decision;

/** What a person reads about scenarios that are not understood. */
final class ScenarioMessages {

    private static final String KNOWN =
            " It can be an item, a supplier, a currency, Labour rate, Freight, Fill, Fill loss or Run size.";

    private ScenarioMessages() {}

    static String unknown(String what) {
        return "The scenario changes \"" + what + "\", which is not in the workbook, so it is not costed." + KNOWN;
    }

    static String notAChange(String change, String what) {
        return "\"" + change + "\" of \"" + what
                + "\" is not understood, so the scenario is not costed. Type a change in per cent, such as +10 %.";
    }

    static String notAValue(String change, String what) {
        return "\"" + change + "\" of \"" + what
                + "\" is not understood, so the scenario is not costed. Type a change, such as +10 %, or a new value, such as"
                + " 1500, without marks between thousands.";
    }

    static String noSign(String change, String what) {
        return "\"" + change + "\" of \"" + what
                + "\" can mean a change or a new value, so the scenario is not costed. Type a sign, such as +10 %.";
    }

    static String belowZero(String change, String what) {
        return "\"" + change + "\" would leave nothing of \"" + what + "\", so the scenario is not costed.";
    }

    static String homeCurrency(String currency) {
        return currency
                + " is your home currency; every amount is in it, so the scenario is not costed. Change the other"
                + " currency instead.";
    }

    static String noRate(String currency) {
        return "There is no exchange rate for " + currency + ", so the scenario is not costed.";
    }

    static String noPrice(String item) {
        return "\"" + item + "\" has no price that could change, so the scenario is not costed.";
    }
}
