package perkilo.report.part;

import java.math.BigDecimal;
import java.util.List;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.DutyBasis;
import perkilo.sheet.Expr;

/**
 * The landed cost of an order to one supplier, as formulas. Amounts are in the supplier's currency unless the name says
 * otherwise.
 */
public final class Landing {

    private static final int GRAMS_PER_KG = 1000;

    private final Supplier supplier;
    private final Market.Charges charges;
    private final DutyBasis dutyBasis;
    private final Expr rate;
    private final Origin rateOrigin;
    private final Expr onePlusMargin;

    /** The formulas for orders to a supplier. */
    public Landing(Market market, Supplier supplier) {
        this.supplier = supplier;
        this.charges = Market.charges(supplier);
        this.dutyBasis = market.book().settings().dutyBasis();
        var conversion =
                market.conversion(supplier.currency(), market.book().settings().home());
        this.rate = Inputs.rate(conversion);
        this.rateOrigin = conversion.legs().stream()
                .findFirst()
                .map(leg -> leg.rate().rate().origin())
                .orElse(Origin.NONE);
        Figure margin = market.margin(supplier);
        this.onePlusMargin = Inputs.isNone(margin) ? Expr.of(1) : Inputs.onePlus(margin);
    }

    /** The supplier. */
    public Supplier supplier() {
        return supplier;
    }

    /** The charges that the buyer pays. */
    public Market.Charges charges() {
        return charges;
    }

    /** Home currency for one unit of the supplier's. */
    public Expr rate() {
        return rate;
    }

    /** The cell of the rate. */
    public Origin rateOrigin() {
        return rateOrigin;
    }

    /** Packs times the size of a pack, in the offer's pack unit. */
    public static Expr inPackUnit(Listing listing, Expr packs) {
        return packs.times(Expr.input(listing.offer().packSize()));
    }

    /** A quantity in the pack unit in kilograms or pieces. */
    public static Expr quantity(Listing listing, Expr inPackUnit) {
        return times(inPackUnit, Inputs.basePer(listing.offer().packUnit(), listing.density()));
    }

    /**
     * The price of a pack at the price break of the quantity: with all breaks, so that it follows the packs. In the
     * offer's currency.
     */
    public static Expr price(Listing listing, Expr inPackUnit) {
        List<Offer.PriceBreak> breaks = listing.offer().breaks();
        Expr price = pricePerPack(listing, breaks.get(0));
        for (Offer.PriceBreak next : breaks.subList(1, breaks.size())) {
            Figure from = next.from();
            if (from != null) {
                price = Expr.ifAtLeast(inPackUnit, Expr.input(from), pricePerPack(listing, next), price);
            }
        }
        return price;
    }

    /** The value of goods in the supplier's currency, from that in the offer's. */
    public static Expr invoiced(Listing listing, Expr quoted) {
        return times(quoted, Inputs.rate(listing.toSupplier()));
    }

    /** Insurance on goods. */
    public Expr insurance(Expr goods) {
        return unlessNone(charges.insurance(), goods.times(Expr.input(charges.insurance())));
    }

    /**
     * Freight by weight.
     *
     * @param quantity in kilograms or pieces; for pieces of unknown weight there is no freight by weight
     */
    public Expr freightByWeight(Listing listing, Expr quantity) {
        Figure perKg = charges.freightPerKg();
        if (!listing.isByPiece()) {
            return unlessNone(perKg, quantity.times(Expr.input(perKg)));
        }
        Figure grams = listing.pieceWeight();
        return grams == null
                ? Expr.of(0)
                : unlessNone(
                        perKg,
                        quantity.times(Expr.input(grams))
                                .over(Expr.of(GRAMS_PER_KG))
                                .times(Expr.input(perKg)));
    }

    /** Duty on a line: on the goods alone, or with insurance and freight, by the duty basis. */
    public Expr duty(Listing listing, Expr goods, Expr insurance, Expr freight) {
        Figure duty = listing.duty();
        Expr dutiable = dutyBasis == DutyBasis.CIF ? goods.plus(insurance).plus(freight) : goods;
        return unlessNone(duty, Expr.input(duty).times(dutiable));
    }

    /** The cost of a line alone, with the bank's margin, in home currency. */
    public Expr lineAlone(Expr goods, Expr insurance, Expr freight, Expr duty) {
        Expr paid = times(goods.plus(insurance).plus(freight), onePlusMargin).plus(duty);
        return times(paid, rate);
    }

    /**
     * The part of a line that moves with its price: goods, insurance, the bank's margin, and the duty on goods and
     * insurance; in home currency.
     */
    public Expr movesWithPrice(Listing listing, Expr goods, Expr insurance) {
        boolean insured = !Inputs.isNone(charges.insurance());
        Expr paid = insured ? goods.plus(insurance) : goods;
        Expr dutiable = dutyBasis == DutyBasis.CIF ? paid : goods;
        Figure duty = listing.duty();
        Expr landed = times(paid, onePlusMargin);
        Expr all = Inputs.isNone(duty) ? landed : landed.plus(Expr.input(duty).times(dutiable));
        return times(all, rate);
    }

    /** The goods value below which an order is charged, or not delivered; zero for none. */
    public Expr minimumOrderValue() {
        return Inputs.orZero(supplier.minimumOrderValue());
    }

    /** The extra charge of an order below the minimum. */
    public Expr smallOrderCharge(Expr goods, Expr minimum) {
        Figure charge = supplier.smallOrderCharge();
        return charge == null ? Expr.of(0) : Expr.ifLess(goods, minimum, Expr.input(charge), Expr.of(0));
    }

    /** Freight for the order, whatever its size. */
    public Expr freightPerOrder() {
        return Expr.input(charges.freightPerOrder());
    }

    /** The order's charges, with the bank's margin and without duty, in home currency. */
    public Expr orderCharges(Expr freight, Expr smallOrderCharge, Expr rateCell) {
        return times(times(freight.plus(smallOrderCharge), onePlusMargin), rateCell);
    }

    /** The duty on a line's share of the order's charges, at the line's own rate. */
    Expr dutyOnShare(Listing listing, Expr lineGoods, OrderCells order) {
        Figure duty = listing.duty();
        Expr small = order.smallOrderCharge();
        Expr dutiable = dutyBasis == DutyBasis.CIF ? order.freight().plus(small) : small;
        return unlessNone(duty, share(Expr.input(duty).times(dutiable), lineGoods, order));
    }

    /** A line's share of an amount for the whole order: by goods value, or equal if all goods are free. */
    static Expr share(Expr ofOrder, Expr lineGoods, OrderCells order) {
        return order.goods().value().signum() == 0
                ? ofOrder.over(Expr.of(order.lines()))
                : ofOrder.times(lineGoods).over(order.goods());
    }

    /**
     * The figures of an order that its lines share.
     *
     * @param goods of all lines
     * @param freight for the order, whatever its size
     * @param smallOrderCharge of an order below the minimum
     * @param charges freight and small-order charge with the bank's margin, without duty, in home currency
     * @param rate home currency for one unit of the supplier's
     * @param lines the number of lines
     */
    public record OrderCells(Expr goods, Expr freight, Expr smallOrderCharge, Expr charges, Expr rate, int lines) {}

    /** A product that leaves out a factor of one. */
    public static Expr times(Expr left, Expr right) {
        boolean one = !right.isLive() && right.value().compareTo(BigDecimal.ONE) == 0;
        return one ? left : left.times(right);
    }

    /** The lowest price of a kilogram or piece in an offer, in home currency. */
    public static Expr lowestPrice(Listing listing) {
        Expr pack = listing.offer().breaks().stream()
                .map(price -> pricePerPack(listing, price))
                .reduce(Expr::min)
                .orElseThrow();
        Expr size = quantity(listing, Expr.input(listing.offer().packSize()));
        return times(pack, Inputs.rate(listing.toHome())).over(size);
    }

    private static Expr pricePerPack(Listing listing, Offer.PriceBreak priced) {
        Expr price = Expr.input(priced.price());
        if (priced.per() == null) {
            return price;
        }
        Offer offer = listing.offer();
        Expr perPack = price.times(Expr.input(offer.packSize()));
        if (priced.per() == offer.packUnit()) {
            return perPack;
        }
        return perPack.times(Inputs.basePer(offer.packUnit(), listing.density()))
                .over(Inputs.basePer(priced.per(), listing.density()));
    }

    /** Zero if the rate is a zero without a cell; live if a person can change it. */
    private static Expr unlessNone(Figure rate, Expr otherwise) {
        return Inputs.isNone(rate) ? Expr.of(0) : otherwise;
    }
}
