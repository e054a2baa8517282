package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.List;
import perkilo.origin.Decimals;

/** What a person reads about a sheet that is laid out in their own way. */
final class ArrangeMessages {

    private ArrangeMessages() {}

    // plans

    static String noProduct() {
        return "This row has units but no product, so it is not read. Type the product's name if the row counts.";
    }

    static String lossOnPlan(String header) {
        return "\"" + header + "\" is not read: a plan counts good units, and losses belong to what they are lost at."
                + " For bulk that stays in the kettle, fill \"Hold-up kg\" on Batches; for bulk lost in filling, \"Fill"
                + " loss %\" on Products; for parts spoiled on the line, \"Loss %\" on Components.";
    }

    // formulas

    static String weights(String header, String whole) {
        return "The column \"" + header + "\" is converted to per cent of " + whole
                + ". Costs follow its cells when the command runs again.";
    }

    static String weightsOfEach(String header, List<String> wholes) {
        return "The column \"" + header + "\" is converted to per cent, for each formula by itself: "
                + String.join(", ", wholes) + ". Costs follow its cells when the command runs again.";
    }

    static String noTotal(String formula, String header) {
        return "\"" + formula + "\" has a q.s. line in the column \"" + header
                + "\" but no total, so its percentages are not known."
                + " Add a row Total with the weight of the batch, or type q.s. to 1000 g.";
    }

    static String namedByProducts(String header) {
        return "The column \"" + header + "\" names several recipes, so each is read as a formula of that name.";
    }

    static String noTotal(String header) {
        return "The column \"" + header + "\" has a q.s. line but no total, so the percentages are not known."
                + " Add a row Total with the weight of the batch, or type q.s. to 1000 g.";
    }

    static String howMuch(String material) {
        return "About how much \"" + material + "\" is used, in per cent of the formula? Type a figure such as 0.2.";
    }

    static String pricesPerKg() {
        return "The prices beside the levels count per kilogram, because no packs are given. So nothing is bought in"
                + " whole packs, and no stock is left over.";
    }

    // facts as lines

    static String whatDensity(String product) {
        return "The fill of \"" + product + "\" is a volume. What is the density of the bulk, in g/mL?";
    }

    static String factsNotRead(List<String> lines) {
        return "These lines hold a figure but are not read: \"" + String.join("\", \"", lines)
                + "\". If one counts, give it a row on the sheet of its kind, such as Offers, Components or Settings.";
    }

    // lists of prices

    static String question(String text, List<String> choices, String asked) {
        return question(text, "Possible answers: " + String.join(", ", choices) + ".", asked);
    }

    static String question(String text, String choices, String asked) {
        return text + (choices.isEmpty() ? "" : " " + choices) + " Write the answer on a sheet Reading, at \"" + asked
                + "\"." + " perkilo check --review makes that sheet.";
    }

    static String whatPricesAreFor(String header) {
        return "Are the prices in the column \"" + header + "\" for one pack, or for 1 kg or 1 piece?";
    }

    static String areSuppliers(List<String> headers) {
        return "Are \"" + String.join("\", \"", headers) + "\" suppliers, with their prices below?";
    }

    static String whatSuppliersPricesAreFor() {
        return "Are the prices below the suppliers for one pack, or for 1 kg (for pieces: 1 piece)?";
    }

    static String whatCurrency(String header) {
        return "In which currency are the prices in the column \"" + header + "\"? Type its code, such as EUR.";
    }

    static String forOrFrom(String header, String quantity) {
        return "Does \"" + header + "\" hold the price for " + quantity + ", or the price from " + quantity
                + " upwards?";
    }

    /** How many units a batch gives is not known. */
    static String unitsOfBatch(String product) {
        return "\"" + product + "\" is planned in batches here, and purchases are planned in units. How many units does"
                + " one batch give?";
    }

    /** The same, where the size of a batch is known, or else the largest one. */
    static String unitsOfBatch(String product, BigDecimal kg, BigDecimal units, boolean isSize) {
        return unitsOfBatch(product) + " " + (isSize ? "A batch of " : "The largest batch, ") + Decimals.plain(kg)
                + " kg" + (isSize ? "" : ",") + " fills " + units.toPlainString() + " if nothing is lost.";
    }

    static String perBatch(String product, BigDecimal units) {
        return "Batches of \"" + product + "\" are read as " + Decimals.plain(units)
                + " units each, as the sheet Reading says.";
    }

    static String noSupplier() {
        return "No supplier is named for these prices. Add a column Supplier, or a line \"Supplier: \" and the name"
                + " above them.";
    }

    // the sheet Reading

    static String noHeaders() {
        return "The sheet Reading has no headers, so it is not used. It needs the columns Sheet, What is there and"
                + " Read as.";
    }

    static String noSuchSheet(String sheet) {
        return "There is no sheet \"" + sheet + "\" any more, so this row changes nothing. Correct or delete it.";
    }

    static String noSuchHeader(String header, String sheet) {
        return "\"" + header + "\" is no longer on the sheet \"" + sheet
                + "\", so this row changes nothing. Correct or delete it.";
    }

    static String ignored(String header) {
        return "The column \"" + header + "\" is left out, as the sheet Reading says.";
    }

    static String canMeanTwo(String text) {
        return "\"" + text + "\" can mean two things.";
    }

    static String unknownTable(String text) {
        return "Read as is \"" + text + "\", which is not one of the tables. Choose one from the list, or ignore.";
    }

    static String unknownColumn(String text) {
        return "Read as is \"" + text + "\", which is not one of the columns. Choose one from the list, or ignore.";
    }

    static String unknownAnswer(String asked, String text) {
        return "The answer to \"" + asked + "\" is \"" + text
                + "\", which is not understood. Choose one from the list.";
    }
}
