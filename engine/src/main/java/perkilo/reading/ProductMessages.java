package perkilo.reading;

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

    static String componentTwice(String component, String product, String first) {
        return "The component \"" + component + "\" of \"" + product + "\" is already in " + first
                + ". Put the pieces into one row.";
    }
}
