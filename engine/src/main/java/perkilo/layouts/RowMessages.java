package perkilo.layouts;

import java.math.BigDecimal;
import java.util.List;
import perkilo.origin.Counted;

/** What a person reads about one cell of a price list. */
final class RowMessages {

    private static final String CORRECT_ONE = " Correct one of them.";

    private RowMessages() {}

    // items and other texts

    static String itemFault(String fault) {
        return "The item is " + fault + ".";
    }

    static String longItem(int characters, int most) {
        return "The item's name has " + characters + " characters; a name can have at most " + most + ". Shorten it.";
    }

    static String longText(String column, int characters, int most) {
        return "The " + column + " has " + characters + " characters; it can have at most " + most + ". Shorten it.";
    }

    // packs and quantities

    static String noPack() {
        return "The row gives no pack size. Type one, such as 25 kg.";
    }

    static String packNotUnderstood(String pack) {
        return "The pack \"" + pack + "\" is not understood."
                + " Type one such as 25 kg, or type 25 and add a column for the unit.";
    }

    static String quantityNotUnderstood(String column, String quantity) {
        return "The " + column + " \"" + quantity + "\" is not understood. Type a quantity such as 100 kg or 5 packs.";
    }

    static String quantityDoesNotFit(String unit, String packUnit) {
        return "A quantity in " + unit + " does not fit a pack in " + packUnit
                + ". Use the same kind of unit for both.";
    }

    static String notANumber(String column, String text) {
        return "The " + column + " \"" + text + "\" is not a number. Type the figure alone.";
    }

    static String notADate(String column, String text) {
        return "The date \"" + text + "\" (" + column + ") is not understood. Type it as YYYY-MM-DD.";
    }

    static String roughDate(String text, String day) {
        return "\"" + text + "\" is read as " + day + ".";
    }

    static String endBeforeBegin(String last, String first) {
        return "The prices are valid until " + last + ", which is before their first day, " + first
                + ". Correct one of the dates.";
    }

    static String packsOfNames(String item, String pack) {
        return "There is no column for the pack size, so it is taken from the names, for example " + pack + " from \""
                + item + "\".";
    }

    // how much a price is

    static String priceIsRange(String price) {
        return "The price \"" + price + "\" is a range. Ask the supplier for one price.";
    }

    static String aboutPrice(String price) {
        return "The price \"" + price + "\" is not firm. It is used as it is. Ask the supplier for a firm price.";
    }

    static String percentOutOfRange(String column, String percent) {
        return "The " + column + " is " + percent + ". Type a figure from 1 to 99, such as 5 for 5 %.";
    }

    static String surchargeDoesNotFit(String unit, String pack) {
        return "The surcharge is per " + unit + ", which does not fit a pack of " + pack + ".";
    }

    static String priceFault(String fault) {
        return "The price is " + fault + ".";
    }

    static String priceIsDate(String day) {
        return "The price is the date " + day + ". Give the cell a number format.";
    }

    static String priceIsPercentage() {
        return "The price is a percentage. Type an amount.";
    }

    static String priceNotUnderstood(String price) {
        return "The price \"" + price + "\" is not understood. Type one such as 12.50.";
    }

    static String priceNotAboveZero(BigDecimal price) {
        return "The price is " + Quantity.plain(price) + ", so it is ignored. A price must be above zero.";
    }

    // what a price is in

    static String unknownCurrency(String currency) {
        return "The currency \"" + currency + "\" is not known. Type a code such as EUR.";
    }

    static String otherCurrencyInRow(String ofPrice, String ofRow) {
        return "The price is in " + ofPrice + ", but the currency of the row is " + ofRow + "." + CORRECT_ONE;
    }

    static String otherCurrencyShown(String shown, String said) {
        return "The cell shows the price in " + shown + ", but the list says " + said + ". " + said + " is used.";
    }

    // what a price is for

    static String basisNotUnderstood(String basis) {
        return "The price is for \"" + basis
                + "\", which is not understood. Type pack, or an amount such as kg, 100 g or L.";
    }

    static String rowOverList(String remark) {
        return "The row says \"" + remark + "\" but the list says otherwise. As you answered, the row applies.";
    }

    static String listOverRow(String remark) {
        return "The row says \"" + remark + "\" but the list says otherwise. As you answered, the list applies.";
    }

    static String priceOfOtherPack(String ofPrice, String pack) {
        return "The price is for a pack of " + ofPrice + ", but the pack is " + pack + "." + CORRECT_ONE;
    }

    static String priceOfOtherKind(String unit, String pack) {
        return "The price is per " + unit + ", but the pack is " + pack + "." + CORRECT_ONE;
    }

    static String oddAmount(String amount) {
        return "The price is for " + amount + ". Type the price for 1, 10, 100 or 1,000 of a unit.";
    }

    // rows that are left out, or kept with a doubt

    static String onRequest(int prices, List<String> some) {
        String which = listed(some, ", ", prices - some.size()) + ".";
        return prices == 1
                ? "1 price is on request, so it is left out: " + which
                : Counted.of(prices, "price") + " are on request, so they are left out: " + which;
    }

    static String otherPricesOfPack(String item, String pack, String why) {
        return "\"" + item + "\" in packs of " + pack + " has no price here (" + why + "). Its other prices are used.";
    }

    static String noFirstPrice(String item, String from) {
        return "\"" + item + "\" has no price for less than \"" + from + "\": the cell is blank."
                + " Ask the supplier if you need less.";
    }

    static String noItemAbove() {
        return "The row has no item, and the one above it is left out. So it is left out too.";
    }

    static String remarkIsBreak(String text) {
        return "\"" + text + "\" is read as a price break of its row.";
    }

    static String remarkIsMinimum(String text) {
        return "\"" + text + "\" is read as the minimum order of its row.";
    }

    static String breaksWithoutPrice(List<String> some, int more) {
        return "The list says that more costs less, but not how much: " + listed(some, ", ", more)
                + ". It is not used. Ask the supplier for the price and the quantity that it begins at.";
    }

    static String textsLeftOut(String header, List<String> some, int more) {
        return "Texts in the column \"" + header + "\" look like prices. As you answered, they are left out: "
                + listed(some, ", ", more) + ".";
    }

    static String chargesPerOrder(String header, String example, int cells) {
        return "The column \"" + header + "\" holds " + Counted.of(cells, "charge") + " per order, such as " + example
                + ". The prices are without them. Add them to your workbook, on the sheet Suppliers, as"
                + " \"Freight per order\".";
    }

    static String chargeOfOrders(String line) {
        return "The list says \"" + line
                + "\". As you answered, the prices are without it. Add it to your workbook, on the"
                + " sheet Suppliers, as \"Freight per order\" or \"Small-order charge\".";
    }

    static String chargePerOrder(String text) {
        return "\"" + text + "\" is a charge per order, so the price is without it. Add it to your workbook, on the"
                + " sheet Suppliers, as \"Freight per order\".";
    }

    static String struckOut(String words) {
        return "\"" + words + "\" is struck through. As you answered, it is left out.";
    }

    static String totalOrNote(String words) {
        return "\"" + words + "\" looks like a total or a note, so the row is left out."
                + " If it is an offer, give it an item and a pack.";
    }

    static String withoutPrice(String item, String pack, String why) {
        return "\"" + item + "\" in packs of " + pack + " has no price (" + why
                + "). An older price is no longer used. Ask the supplier for a new one.";
    }

    static String withoutPriceAndPack(String item, String why) {
        return "\"" + item + "\" has no price (" + why + ") and no pack size, so it is left out."
                + " An older price may still be in use. Ask the supplier.";
    }

    static String doubtedPrice(String item, String remark) {
        return "\"" + item + "\" has a price and the remark \"" + remark
                + "\". The price is used. Ask the supplier whether it is valid.";
    }

    static String doubtedPrices(int prices, List<String> some) {
        return Counted.of(prices, "price") + " have a remark that speaks against them: "
                + listed(some, ", ", prices - some.size())
                + ". They are used. Ask the supplier whether they are valid.";
    }

    private static String listed(List<String> some, String between, int more) {
        return String.join(between, some) + (more > 0 ? " and " + more + " more" : "");
    }
}
