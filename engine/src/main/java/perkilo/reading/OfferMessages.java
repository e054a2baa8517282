package perkilo.reading;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Counted;

/** What a person reads about offers: their prices and packs, and whether a quote is used. */
final class OfferMessages {

    private OfferMessages() {}

    // price lists

    static String none(List<String> sheets) {
        return sheets.isEmpty()
                ? none()
                : none() + " These sheets were not recognised: " + String.join(", ", sheets) + ".";
    }

    private static String none() {
        return "No price sheet was recognised. It needs the columns Supplier, Item, Pack size, Pack unit, Price and"
                + " Price per: add such a sheet, or rename your headers.";
    }

    static String takeIn(String file) {
        return "This is a supplier's list that leaves something open. Take it in first (perkilo prices " + file + ").";
    }

    static String noPriceList() {
        return "No price list was recognised in this file. It needs a table with columns such as Supplier, Item, Pack"
                + " size and Price.";
    }

    static String noPriceListInFolder() {
        return "This file holds no price list, so it is ignored.";
    }

    static String ratesInFolder() {
        return "This file holds exchange rates and no prices, so it is ignored. Use --rates to read it.";
    }

    static String passedOver(int rows) {
        return Counted.of(rows, "row") + " of the price lists " + (rows == 1 ? "is" : "are")
                + " of items that this workbook does not name, so " + (rows == 1 ? "it was" : "they were")
                + " not checked. perkilo check reads all rows.";
    }

    // what a price is for

    static String unknownBasis(String price, String unit) {
        return "Is " + price + " the price of one pack or of 1 " + unit + "? Type pack or " + unit
                + " in a column Price per.";
    }

    static String unknownBasisOfColumn(String header) {
        return "Are the prices in the column \"" + header
                + "\" for one pack, or for 1 kg or 1 piece? Add a column Price"
                + " per with pack, kg or each, or answer at \"price per\" on the sheet that perkilo check --review makes.";
    }

    static String notABasis(String text) {
        return "Price per is \"" + text
                + "\", which is not recognised. Use pack, kg, 100 g, g, lb, oz, L, US gal, imp gal or each.";
    }

    static String twoBases(String per, String text) {
        return "Price is per " + per + ", but Price per says " + text + ". Correct one of them.";
    }

    static String otherBasis(String per, String packUnit) {
        return "The price is per " + per + ", but the pack is measured in " + packUnit + ". Correct one of them.";
    }

    static String free() {
        return "Price is 0: treated as free of charge.";
    }

    // currency of a price

    static String noCurrency() {
        return "The currency of the price is unknown. Fill Currency here, or in the supplier's row in Suppliers, with a"
                + " code such as EUR, or answer at \"currency\" on the sheet that perkilo check --review makes.";
    }

    static String dollars(String sign) {
        return "\"" + sign + "\" is assumed to mean US dollars. Type USD to be clear.";
    }

    static String sharedSign(String sign, String one, String other) {
        return "\"" + sign + "\" can mean " + one + " or " + other + ". Fill Currency with the code.";
    }

    static String twoCurrencies(String sign, String currency) {
        return "Price is in " + sign + ", but Currency says " + currency + ". Correct one of them.";
    }

    static String otherFormat(String sign, String currency) {
        return "Price is formatted in " + sign + ", but Currency says " + currency + ". The number format is ignored.";
    }

    // packs

    static String materialInPieces(String item) {
        return "The pack of \"" + item + "\" is in pieces, but it is a raw material. Use a unit such as kg or L.";
    }

    static String componentNotInPieces(String item, String unit) {
        return "The pack of \"" + item + "\" is in " + unit + ", but it is a component. Use pieces (each).";
    }

    static String noDensity(String item) {
        return "\"" + item + "\" is sold by volume, but its density is unknown. Fill Density g/mL in Materials.";
    }

    static String noDensityUnused(String item) {
        return noDensity(item) + " The offer is ignored, because no formula uses it.";
    }

    // rows of one offer that do not agree

    static String differs(String column, String other) {
        return column + " differs from the row of the same offer in " + other + ". Correct one of them.";
    }

    static String samePrice(String other) {
        return "The same offer is already in " + other + ". Delete one of them.";
    }

    static String secondPrice(String first) {
        return "This is a second price from the same quantity; the first is in " + first
                + ". Keep one, or type the date of each quote.";
    }

    static String dearer(BigDecimal from, String unit, String smaller) {
        return "The price from " + from.toPlainString() + " " + unit + " is above the price from a smaller quantity in "
                + smaller + ". Check both.";
    }

    // quotes that others replace

    static String superseded(@Nullable LocalDate newer, String where) {
        return "The newer quote" + of(newer) + " in " + where + " is used instead of this one.";
    }

    static String undated(@Nullable LocalDate dated, String where) {
        return "This quote has no date, so the quote" + of(dated) + " in " + where + " is used instead.";
    }

    static String followed(@Nullable LocalDate newer, String where, LocalDate costingDate) {
        return "The newer quote" + of(newer) + " in " + where
                + " has followed this one. Neither is valid on the costing date " + costingDate + ".";
    }

    static String undatedFollowed(@Nullable LocalDate newer, String where, LocalDate costingDate) {
        return "This quote has no date, and the quote" + of(newer) + " in " + where
                + " is not valid on the costing date " + costingDate
                + ". If this one is newer, type the day on which it was quoted.";
    }

    static String usedAgain(
            @Nullable LocalDate quoted,
            @Nullable LocalDate newer,
            String where,
            LocalDate ended,
            @Nullable LocalDate last,
            boolean byAge) {
        return "The newer quote" + of(newer) + " in " + where + " ended on " + ended + ", so this quote" + of(quoted)
                + " is used again" + until(last, byAge) + ". Ask the supplier which price is valid.";
    }

    static String plannedAgain(
            @Nullable LocalDate quoted,
            @Nullable LocalDate newer,
            String where,
            LocalDate from,
            @Nullable LocalDate last,
            boolean byAge) {
        return "The newer quote" + of(newer) + " in " + where + " ends on " + from.minusDays(1) + ". Orders from "
                + from
                + " on are planned at this quote" + of(quoted) + " again" + until(last, byAge)
                + ". Ask the supplier which price is valid then.";
    }

    private static String until(@Nullable LocalDate last, boolean byAge) {
        if (last == null) {
            return "";
        }
        return byAge
                ? ", until " + last + " by \"Price age limit days\", because its \"Valid until\" is blank"
                : ", until " + last;
    }

    private static String of(@Nullable LocalDate day) {
        return day == null ? "" : " of " + day;
    }

    static String withoutPrice(String item, String pack, String supplier, LocalDate list, String older) {
        return noPrice(item, pack, supplier, list) + ", so the older price in " + older
                + " is ignored. Ask the supplier, and add the answer as an offer with a later \"Quoted on\".";
    }

    static String endsBefore(
            String item,
            String pack,
            String supplier,
            LocalDate list,
            LocalDate costingDate,
            String where,
            @Nullable LocalDate last) {
        return noPrice(item, pack, supplier, list) + ", which is after the costing date " + costingDate
                + ". The price in " + where + " is assumed to end on " + last + ".";
    }

    private static String noPrice(String item, String pack, String supplier, LocalDate list) {
        return "\"" + item + "\" in packs of " + pack + " has no price on " + supplier + "'s list of " + list;
    }

    static String notOnNewestList(
            String item, String pack, String supplier, String file, LocalDate list, @Nullable LocalDate quoted) {
        return "\"" + item + "\" in packs of " + pack + " is not on " + supplier + "'s newest list, " + file + " of "
                + list + ". The price of " + quoted
                + " is still used, because a list may be partial. Ask the supplier whether the pack is still sold.";
    }

    static String notOnNewestList(List<String> packs, int more, String supplier, String file, LocalDate list) {
        return Counted.of(packs.size() + more, "pack") + " of this list are not on " + supplier + "'s newest list, "
                + file + " of " + list + ": " + String.join(", ", packs) + (more > 0 ? " and " + more + " more" : "")
                + ". Their older prices are still used, because a list may be partial."
                + " Ask the supplier whether the packs are still sold.";
    }

    // quotes that are expired, old, or of a coming day

    static String expired(String item, String supplier, @Nullable LocalDate validUntil, LocalDate costingDate) {
        return "The offer of \"" + item + "\" by " + supplier + " expired on " + validUntil
                + ", before the costing date " + costingDate + ", so it is not used. Ask for a new quote.";
    }

    static String old(LocalDate quoted, long days, BigDecimal limit) {
        return "This quote of " + quoted + " is " + Counted.of(days, "day")
                + " older than the costing date; the limit is " + limit.toPlainString() + " days. Ask for a new quote.";
    }

    static String neverValid(String item, String supplier, @Nullable LocalDate quoted, @Nullable LocalDate validUntil) {
        return "The offer of \"" + item + "\" by " + supplier + " is quoted on " + quoted + " but valid only until "
                + validUntil + ", so it is not used. Correct one of the two days.";
    }

    static String announced(@Nullable LocalDate quoted, LocalDate costingDate) {
        return comes(quoted, costingDate) + "; costs do not use it yet.";
    }

    static String announced(@Nullable LocalDate quoted, LocalDate costingDate, String before) {
        return comes(quoted, costingDate) + "; costs use the quote in " + before + ".";
    }

    private static String comes(@Nullable LocalDate quoted, LocalDate costingDate) {
        return "This price is quoted on " + quoted + ", after the costing date " + costingDate
                + ". Orders from that day on are planned at this price";
    }

    // the same for many rows

    static String alsoForOthers(int others) {
        return "The same holds for " + Counted.of(others, "more quote", "more quotes") + " of this list.";
    }

    // discounts and surcharges

    static String percentOrAmount(String header, String column) {
        return "\"" + header + "\" may be in per cent or an amount. If it is in per cent, rename it to \"" + column
                + "\". If it is an amount, put it into the prices and empty the column.";
    }

    static String pricesChanged(String header) {
        return "\"" + header
                + "\" is applied to the prices. Results show the price after it, as a value without a link.";
    }
}
