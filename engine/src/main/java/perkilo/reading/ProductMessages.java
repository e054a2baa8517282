package perkilo.reading;

import java.math.BigDecimal;

/** What a person reads about products and their components. */
final class ProductMessages {

    private ProductMessages() {}

    static String fillInPieces(String unit) {
        return "Fill unit is " + unit + ". Use a unit of mass or volume, such as g or mL.";
    }

    static String noDensity(String product) {
        return "The fill of \"" + product
                + "\" is a volume, but Density g/mL is missing. Type the density of the bulk.";
    }

    static String otherWeight(String component, BigDecimal grams, BigDecimal first, String where) {
        return "\"" + component + "\" weighs " + grams.toPlainString() + " g here and " + first.toPlainString()
                + " g in " + where + ". The weight in " + where + " is used; type the same in both.";
    }

    static String componentTwice(String component, String product, String first) {
        return "The component \"" + component + "\" of \"" + product + "\" is already in " + first
                + ". Put the pieces into one row.";
    }
}
