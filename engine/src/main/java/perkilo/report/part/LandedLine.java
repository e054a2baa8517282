package perkilo.report.part;

import java.util.List;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.offers.Offer;
import perkilo.purchasing.LineCost;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.units.Currencies;

/**
 * A line of a purchase as a row of a sheet: packs, quantity, price, goods, what comes on top, its share of what is
 * charged for the order, and what it costs once it is here.
 *
 * @param cost the line
 * @param row its row, from zero
 * @param column the column of the packs, from zero; the others follow
 * @param packs chosen
 * @param quantity in kilograms or pieces
 * @param goods as invoiced, in the supplier's currency
 * @param alone with insurance, freight by weight and duty, in home currency
 */
public record LandedLine(LineCost cost, int row, int column, Expr packs, Expr quantity, Expr goods, Expr alone) {

    private static final int QUANTITY = 1;
    private static final int PRICE = 2;
    private static final int GOODS = 3;
    private static final int INSURANCE = 4;
    private static final int FREIGHT = 5;
    private static final int DUTY = 6;
    private static final int ALONE = 7;
    private static final int SHARE = 8;
    private static final int LANDED = 9;
    private static final int PRICE_DIGITS = 4;

    /** The heads of the columns, from the packs on. */
    public static List<String> heads(String home) {
        return List.of(
                "Packs",
                "Quantity (kg or pieces)",
                "Price per pack",
                "Goods as invoiced",
                "Insurance",
                "Freight by weight",
                "Duty on the line",
                "Line, " + home,
                "Share of order charges, " + home,
                "Landed, " + home);
    }

    /** Writes a line up to what it costs without its share of the order's charges. */
    public static LandedLine write(
            SheetBuilder sheet, int row, int column, Landing landing, LineCost line, Listing listing, String home) {
        Offer offer = listing.offer();
        String code = offer.currency().getCurrencyCode();
        int digits = Currencies.minorDigits(offer.currency());
        Expr packs = sheet.value(row, column, Expr.of(line.line().packs()), NumberFormat.WHOLE, Look.CHOICE);
        Expr inPackUnit = Landing.inPackUnit(listing, packs);
        Expr quantity = sheet.checked(
                row,
                column + QUANTITY,
                Landing.quantity(listing, inPackUnit),
                line.quantity(),
                listing.isByPiece() ? NumberFormat.WHOLE : NumberFormat.QUANTITY,
                Look.PLAIN);
        Expr price = sheet.value(
                row,
                column + PRICE,
                Landing.price(listing, inPackUnit),
                NumberFormat.money(code, Math.max(PRICE_DIGITS, digits)),
                Look.PLAIN,
                offer.breaks().get(line.tier()).origin());
        Expr quoted = sheet.checked(
                row,
                column + GOODS,
                packs.times(price).rounded(digits),
                line.goodsQuoted(),
                NumberFormat.money(code, digits),
                Look.PLAIN);
        Expr goods = Landing.invoiced(listing, quoted);
        Expr alone = charged(sheet, row, column, landing, listing, quantity, goods, home);
        return new LandedLine(line, row, column, packs, quantity, goods, alone);
    }

    private static Expr charged(
            SheetBuilder sheet,
            int row,
            int column,
            Landing landing,
            Listing listing,
            Expr quantity,
            Expr goods,
            String home) {
        Market.Charges charges = landing.charges();
        NumberFormat money = NumberFormat.money(landing.supplier().currency().getCurrencyCode(), 2);
        Expr insurance = sheet.value(
                row,
                column + INSURANCE,
                landing.insurance(goods),
                money,
                Look.PLAIN,
                charges.insurance().origin());
        Expr freight = sheet.value(
                row,
                column + FREIGHT,
                landing.freightByWeight(listing, quantity),
                money,
                Look.PLAIN,
                charges.freightPerKg().origin());
        Expr duty = sheet.value(
                row,
                column + DUTY,
                landing.duty(listing, goods, insurance, freight),
                money,
                Look.PLAIN,
                listing.duty().origin());
        return sheet.value(
                row,
                column + ALONE,
                landing.lineAlone(goods, insurance, freight, duty),
                NumberFormat.money(home, 2),
                Look.PLAIN,
                landing.rateOrigin());
    }

    /**
     * Writes the line's share of what is charged for the order, and what the line costs with it.
     *
     * @param share in home currency
     * @return the landed cost, in home currency
     */
    public Expr writeShare(SheetBuilder sheet, Expr share, String home) {
        NumberFormat inHome = NumberFormat.money(home, 2);
        Expr shareCell = sheet.value(row, column + SHARE, share, inHome, Look.PLAIN);
        return sheet.checked(row, column + LANDED, alone.plus(shareCell), cost.landed(), inHome, Look.TOTAL);
    }
}
