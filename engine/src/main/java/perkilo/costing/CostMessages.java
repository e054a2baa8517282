package perkilo.costing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import perkilo.origin.Counted;

/** What a person reads about the costs of runs. */
public final class CostMessages {

    private static final String NEW_QUOTE = " Ask for a new quote.";

    private CostMessages() {}

    // runs that cannot be made

    static String cannotBeMade(BigDecimal batchKg, String formula, String why) {
        return batchKg.toPlainString() + " kg of " + formula + " cannot be made. " + sentence(why);
    }

    static String nothingBeyondHoldUp(BigDecimal batchKg, BigDecimal holdUpKg) {
        return "A batch of " + batchKg.toPlainString() + " kg leaves nothing beyond its hold-up of "
                + holdUpKg.toPlainString() + " kg.";
    }

    static String vesselHoldsOnlyHoldUp(BigDecimal vesselKg, BigDecimal holdUpKg) {
        return "A vessel of " + vesselKg.toPlainString() + " kg holds no more than its hold-up of "
                + holdUpKg.toPlainString() + " kg.";
    }

    // runs that are not complete

    /** How many runs are not complete. */
    public static String notComplete(int open, int all) {
        return "Not complete: " + open + " of " + Counted.of(all, "run") + (open == 1 ? " lacks" : " lack")
                + " something, so there is no unit cost for " + (open == 1 ? "it" : "them") + ".";
    }

    /** What a run lacks; {@code more} things are not named. */
    public static String lacks(List<String> missing, int more) {
        return "Not complete. Missing: " + String.join("; ", missing) + (more > 0 ? "; and " + more + " more" : "")
                + ".";
    }

    // items that cannot be bought

    static String materialWithoutOffer(String material) {
        return noOffer(material) + "Add an offer for it, or a house price on the Materials sheet.";
    }

    static String componentWithoutOffer(String component) {
        return noOffer(component) + "Add an offer for it.";
    }

    private static String noOffer(String item) {
        return "\"" + item + "\" has no offer, so it cannot be bought. ";
    }

    static String offerExpired(String item, LocalDate today, String supplier, String cell, LocalDate lastDay) {
        return noOfferToday(item, today, supplier, cell) + "expired on " + lastDay + "." + NEW_QUOTE;
    }

    static String offerStartsLater(String item, LocalDate today, String supplier, String cell, LocalDate firstDay) {
        return noOfferToday(item, today, supplier, cell) + "starts only on " + firstDay + "." + NEW_QUOTE;
    }

    static String offerNotUsable(String item, LocalDate today, String supplier, String cell) {
        return noOfferToday(item, today, supplier, cell) + "cannot be used." + NEW_QUOTE;
    }

    private static String noOfferToday(String item, LocalDate today, String supplier, String cell) {
        return "No offer for \"" + item + "\" is valid on " + today + ". The last one listed, from " + supplier + " ("
                + cell + "), ";
    }

    static String noPurchaseInTime(String run) {
        return "No purchase for " + run + " was found in the time allowed.";
    }

    /** Why there is no purchase, in the words of the search; {@code remedy} may be empty. */
    public static String shortfall(String reason, String remedy) {
        return remedy.isEmpty() ? sentence(reason) : sentence(reason) + " " + sentence(remedy);
    }

    /** Why there is no purchase for a part of what is needed; {@code remedy} may be empty. */
    public static String shortfall(String what, String reason, String remedy) {
        return what + ": " + ended(reason) + (remedy.isEmpty() ? "" : " " + sentence(remedy));
    }

    static String shortfallOfItem(String item, String reason, String remedy) {
        return shortfall("\"" + item + "\"", reason, remedy);
    }

    // figures that rest on less than a person may think

    static String freeProcessWater(String water) {
        return "\"" + water + "\" is counted as free process water, because it has no offer and no house price."
                + " To change this, fill \"Process water price per kg\" on the Settings sheet.";
    }

    static String processWater(String water, BigDecimal pricePerKg, String currency) {
        return "\"" + water + "\" is counted as process water at " + pricePerKg.toPlainString() + " " + currency
                + " per kg, because it has no offer and no house price.";
    }

    static String ladderWithout(String product, List<String> without) {
        return "The price ladder of \"" + product + "\" is without " + String.join(" and without ", without)
                + ", because nothing is typed there. Fill it in where the product is described, or type 0.";
    }

    static String workWithoutRate() {
        return "Hours of work are given but no labour rate, so the work is counted as 0. Type \"Labour rate\" on the"
                + " Settings sheet.";
    }

    static String notUsedAndNotOffered(String item) {
        return "None of \"" + item + "\" is used. It has no offer, so its price is unknown.";
    }

    static String noAverageQuantityRules(String product) {
        return "\"" + product + "\" is filled to its nominal quantity, although a filler's standard deviation is given."
                + " The average-quantity rules cover only 5 g or mL to 10 kg or L.";
    }

    static String overfillNotUsed(String product) {
        return "\"" + product + "\" has both an overfill and a filler's standard deviation."
                + " Only the standard deviation is used; clear one of the two.";
    }

    static String moreThanAskedFor(String run, String kg) {
        return overVesselMinimum(run, kg) + "was asked for. Its cost is included.";
    }

    static String moreThanFilled(String run, String kg) {
        return overVesselMinimum(run, kg) + "is filled. Its cost is included.";
    }

    private static String overVesselMinimum(String run, String kg) {
        return run + ": the vessel's minimum makes " + kg + " kg more bulk than ";
    }

    static String notProven(String run, String gap, String currency) {
        return run + ": the purchase is the best found in the time allowed. No other can be cheaper by more than " + gap
                + " " + currency + ".";
    }

    /**
     * Freight by weight of pieces, whose weight is unknown.
     *
     * @param first the first such piece
     * @param others how many more there are
     */
    static String weightOfPiecesUnknown(String supplier, String first, int others) {
        String pieces = "\"" + first + "\"" + (others == 0 ? "" : " and " + Counted.of(others, "other piece"));
        return supplier + " charges freight by weight, but the weight of " + pieces + " is unknown."
                + " No freight by weight is counted for " + (others == 0 ? "it" : "them")
                + ". Type \"Weight g\" on the Components sheet.";
    }

    // previous prices

    static String previousCostUnknown(String why) {
        return "The cost at the previous prices is unknown. " + sentence(why);
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + ended(words.substring(1));
    }

    private static String ended(String words) {
        return words.endsWith(".") ? words : words + ".";
    }
}
