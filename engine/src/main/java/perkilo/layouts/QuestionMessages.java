package perkilo.layouts;

import java.math.BigDecimal;
import java.util.List;
import perkilo.origin.Decimals;
import perkilo.units.Measure;

/** What a person is asked about a price list, and how to answer. */
public final class QuestionMessages {

    private static final int MOST_HEADERS = 6;

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

    static String packsOrBreaks(List<String> headers) {
        String some = String.join("\", \"", headers.subList(0, Math.min(headers.size(), MOST_HEADERS)));
        return "Do the columns \"" + some + "\"" + (headers.size() > MOST_HEADERS ? " and so on" : "")
                + " hold prices of packs of these sizes, or price breaks (prices from these quantities on)?";
    }

    static String whichColumn(String meaning, List<String> headers) {
        return "Which column holds the " + meaning + ": " + oneOf(headers) + "?";
    }

    static String whichPackColumn(List<String> headers) {
        return "Which column holds the pack size: " + oneOf(headers)
                + "? If none does and all packs are alike, answer with the pack, such as 25 kg.";
    }

    static String unitOfPacks(String header, String pack) {
        return "In which unit are the packs of the column \"" + header + "\"? The first one is only \"" + pack
                + "\". The answer counts for every pack of the column without a unit.";
    }

    static String noPackColumn() {
        return "No column seems to hold the pack size. If all packs are alike, answer with the pack, such as 25 kg."
                + " Otherwise add a column to the list.";
    }

    static String whatVat(String header) {
        return "The prices in the column \"" + header + "\" seem to include VAT. Prices are needed without it."
                + " How much VAT do they include?";
    }

    static String whatCost(String header) {
        return "The column \"" + header + "\" seems to be about a price or a cost. What does it hold?";
    }

    static String whichDay(String header) {
        return "Is the date in the column \"" + header + "\" the last day of the price, or the first?";
    }

    // what the lines around a table say

    static String firstOrLast(String line, String date) {
        return "The list says \"" + line + "\". Is " + date + " the first day of the prices, or the last?";
    }

    static String whichDate(String what, List<String> days) {
        return "The list gives several dates for the " + what + " of its prices: " + either(days) + ". Which holds?";
    }

    static String untilWhen(String line) {
        return "The list says \"" + line + "\". What is the last day of the prices?";
    }

    static String changesPrices(String line) {
        return "The list says \"" + line + "\". Does that change its prices?";
    }

    static String changesSomePrices(String line) {
        return changesPrices(line)
                + " If it does so for some items only, add \"only to\" and words of their names, packs,"
                + " codes or headings, parted by \";\".";
    }

    static String changesPricesHow(String line) {
        return changesPrices(line)
                + " If it does, type add or subtract with the figure and % or per kg, per pack and so" + " on.";
    }

    static String pricesWithVat(String line) {
        return "The list says \"" + line + "\". How much VAT do its prices include?";
    }

    static String sectionGoesOn(String heading, String next) {
        return "The heading \"" + heading + "\" changes what prices are in or for. Does it also hold below \"" + next
                + "\"?";
    }

    // what rows hold

    static String struckThrough(String words) {
        return "\"" + words + "\" is struck through. Are such prices still offered?";
    }

    static String marked(String price, String note) {
        return "The price \"" + price + "\" has a mark"
                + (note.isEmpty() ? ", and no note explains it." : ": \"" + note + "\".")
                + " Should such prices be used as they are?";
    }

    static String rowWithoutItem() {
        return "The row has a price but no item. Does it belong to the item above, or should such rows be skipped?";
    }

    static String blankBelow(String header, String above) {
        return "In the column \"" + header + "\" the cell is blank below \"" + above
                + "\", in a row that goes on with the item above. Does the same hold there (as above), or nothing (none)?";
    }

    static String textsLikePrices(String header, List<String> some, int more) {
        return "The column \"" + header + "\" holds texts that look like prices and are not understood: "
                + String.join(", ", some) + (more > 0 ? " and " + more + " more" : "")
                + ". Leave them out? Or say on the sheet \"Not read\" what the column is.";
    }

    static String whatMinimum(String text) {
        return "The minimum order \"" + text + "\" is not understood. What is it? Answer with a quantity such as 100 kg"
                + " or 5 packs, or with none.";
    }

    static String whatMinimumOfPack(String text, String pack) {
        return "The minimum order \"" + text + "\" does not fit a pack in " + pack
                + ". What is it? Answer with a quantity such as 5 packs, or with none.";
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
