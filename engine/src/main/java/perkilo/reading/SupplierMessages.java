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
}
