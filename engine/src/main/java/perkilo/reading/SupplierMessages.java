package perkilo.reading;

import java.util.List;

/** What a person reads about suppliers and what they charge. */
final class SupplierMessages {

    private SupplierMessages() {}

    // currency

    static String severalCurrencies(String supplier, String first, String other) {
        return "\"" + supplier + "\" has no row in Suppliers, and offers in " + first + " and " + other
                + ". They are assumed to invoice in " + first + ". Add a row for them, with their currency.";
    }

    static String unclearCurrency(String supplier) {
        return "It is not clear in which currency \"" + supplier
                + "\" invoices. Fill Currency with a code such as EUR.";
    }

    // delivery terms

    static String notATerm(String text, List<String> terms) {
        return "Terms is \"" + text + "\", which is not a delivery term. Use one of " + String.join(", ", terms) + ".";
    }

    static String sellerPays(String column, String term, String charge) {
        return column + " is filled, but under " + term + " the seller pays the " + charge + ", so it is ignored.";
    }

    static String freightFromPort(String column, String term) {
        return column + " is filled. Under " + term + " the seller pays the freight to the port of destination, so"
                + " this amount is counted as freight from the port on.";
    }

    // small orders

    static String chargeWithoutMinimum() {
        return "Small-order charge is filled but Minimum order value is not, so it is never charged."
                + " Fill Minimum order value.";
    }

    // charges on the rows of offers

    static String rowsDisagree(String column, String supplier, String value, String other, String where) {
        return column + " of \"" + supplier + "\" is " + value + " here and " + other + " in " + where
                + ". It holds for all orders from one supplier: type the same in all rows, or type it once on Suppliers.";
    }

    static String offersAndSupplierDisagree(String column, String supplier, String value, String other, String where) {
        return column + " of \"" + supplier + "\" is " + value + " here, blank in other rows, and " + other + " in "
                + where + ". Type the one that holds in all rows, or only on Suppliers.";
    }

    static String offersWin(String column, String supplier, String value, String other, String where) {
        return column + " of \"" + supplier + "\" is " + value + " on all their offers and " + other + " in " + where
                + ". The value on the offers is used. Correct the one that is wrong.";
    }

    static String onSomeRows(String column, String supplier, String value, String where) {
        return column + " of \"" + supplier + "\" is blank here and " + value + " in " + where + ". " + value
                + " is used for all orders from them. Fill it here if that is right.";
    }
}
