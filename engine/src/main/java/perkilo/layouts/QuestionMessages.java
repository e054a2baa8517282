package perkilo.layouts;

import java.math.BigDecimal;
import java.util.List;
import perkilo.origin.Decimals;
import perkilo.units.Measure;

/** What a person is asked about a price list, and how to answer. */
public final class QuestionMessages {

    private QuestionMessages() {}

    // how numbers and dates are written

    static String decimals(String text, BigDecimal withPoint, BigDecimal withComma) {
        return "Does \"" + text + "\" mean " + Quantity.plain(withPoint) + " (decimal point) or "
                + Quantity.plain(withComma) + " (decimal comma)?";
    }

    static String dayOrMonth(String date) {
        return "Does \"" + date + "\" begin with the day or with the month?";
    }

    /** The list's own date may be read in two ways. */
    public static String dayOrMonthOfList() {
        return "Does the date of the list begin with the day or with the month?";
    }

    // what columns hold

    static String whatColumn(String header) {
        return "What does the column \"" + header + "\" hold?";
    }

    static String whatColumn(String header, String answer) {
        return "The answer for the column \"" + header + "\" was \"" + answer
                + "\", which is not understood. What does the column hold?";
    }

    static String whichColumn(String meaning, List<String> headers) {
        return "Which column holds the " + meaning + ": " + oneOf(headers) + "?";
    }

    static String whichPackColumn(List<String> headers) {
        return "Which column holds the pack size: " + oneOf(headers)
                + "? If none does and all packs are alike, answer with the pack, such as 25 kg.";
    }

    static String noPackColumn() {
        return "No column seems to hold the pack size. If all packs are alike, answer with the pack, such as 25 kg."
                + " Otherwise add a column to the list.";
    }

    // what rows hold

    static String rowWithoutItem() {
        return "The row has a price but no item. Does it belong to the item above, or should such rows be skipped?";
    }

    static String whatBreaksCount(String quantity) {
        return "Does the price break at \"" + quantity + "\" count packs, or the unit of the pack (such as kg)?";
    }

    static String whatMinimumsCount(String quantity) {
        return "Does the minimum order \"" + quantity + "\" count packs, or the unit of the pack (such as kg)?";
    }

    // what prices are in, and for

    static String whichCurrency() {
        return "Which currency are the prices in?";
    }

    static String whichCurrency(String sign) {
        return "Which currency does \"" + sign + "\" mean?";
    }

    static String whatPricesAreFor() {
        return "Are the prices for a pack, or for an amount such as 1 kg?";
    }

    static String rowOrList(String remark) {
        return "The row says \"" + remark + "\" but the list says otherwise. Which applies to this price?";
    }

    static String whoseGallons(BigDecimal gallons) {
        return "Is the gallon of this list a US one (" + Measure.US_GAL.inBase() + " L) or an imperial one ("
                + Measure.IMP_GAL.inBase() + " L)? " + Quantity.plain(gallons) + " gal = "
                + litres(gallons, Measure.US_GAL) + " (US) or " + litres(gallons, Measure.IMP_GAL) + " (imperial).";
    }

    private static String litres(BigDecimal gallons, Measure gallon) {
        return Decimals.readable(gallons.multiply(gallon.inBase()), 3) + " L";
    }

    static String caseOrPiece(int packs) {
        return "The pack consists of " + packs + " smaller ones. Is the price for all (case) or for one (piece)?";
    }

    // how to answer

    /** The answers to choose from. */
    public static String choices(List<String> choices) {
        return "Possible answers: " + either(choices) + ".";
    }

    private static String oneOf(List<String> headers) {
        return either(headers.stream().map(header -> "\"" + header + "\"").toList());
    }

    private static String either(List<String> choices) {
        int last = choices.size() - 1;
        return last < 1
                ? String.join("", choices)
                : String.join(", ", choices.subList(0, last)) + " or " + choices.get(last);
    }
}
