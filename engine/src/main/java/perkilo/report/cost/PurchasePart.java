package perkilo.report.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.costing.Purchase;
import perkilo.model.Offer;
import perkilo.model.Supplier;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.OrderCost;
import perkilo.purchasing.Vendor;
import perkilo.report.Expr;
import perkilo.report.Inputs;
import perkilo.report.Look;
import perkilo.report.NumberFormat;
import perkilo.report.SheetBuilder;
import perkilo.report.SheetNames;
import perkilo.units.Currencies;

/** The part of a block that says what is bought, from whom, and what it costs once it is here. */
final class PurchasePart {

    private static final int PACKS = 3;
    private static final int QUANTITY = 4;
    private static final int PRICE = 5;
    private static final int GOODS = 6;
    private static final int INSURANCE = 7;
    private static final int FREIGHT = 8;
    private static final int DUTY = 9;
    private static final int ALONE = 10;
    private static final int SHARE = 11;
    private static final int LANDED = 12;
    private static final int GOODS_HOME = 13;

    private final Rows rows;
    private final SheetBuilder sheet;
    private final Market market;
    private final Purchase purchase;
    private final String home;
    private final Map<LineCost, LineCells> cells = new LinkedHashMap<>();

    /**
     * A purchase line's cells.
     *
     * @param quantity in kilograms or pieces
     * @param landed in home currency
     * @param goods in home currency
     */
    record LineCells(Expr quantity, Expr landed, Expr goods) {}

    PurchasePart(Rows rows, Market market, Purchase purchase) {
        this.rows = rows;
        this.sheet = rows.sheet();
        this.market = market;
        this.purchase = purchase;
        this.home = market.book().settings().home().getCurrencyCode();
    }

    /** Writes the part. */
    Map<LineCost, LineCells> write() {
        rows.section("Purchase", Look.SECTION);
        if (purchase.cost().orders().isEmpty()) {
            rows.section("Nothing has to be bought.", Look.HINT);
            return cells;
        }
        rows.heads(
                "Item",
                "Supplier",
                "Pack",
                "Packs",
                "Quantity (kg or pieces)",
                "Price per pack",
                "Goods as invoiced",
                "Insurance",
                "Freight by weight",
                "Duty on the line",
                "Line, " + home,
                "Share of order charges, " + home,
                "Landed, " + home,
                "Goods at the rate, " + home);
        int first = rows.next();
        int ordersFirst = first + purchase.cost().lines().size() + 3;
        int order = ordersFirst;
        for (OrderCost cost : purchase.cost().orders()) {
            new Order(cost, order++).write();
        }
        rows.skip(1).section("Orders", Look.SECTION);
        rows.heads(
                "Supplier",
                "Delivery term",
                "Currency",
                "Rate to " + home,
                "Goods",
                "Minimum order value",
                "Small-order charge",
                "Freight per order",
                "Duty on charges",
                "Order charges, " + home);
        rows.skip(purchase.cost().orders().size());
        return cells;
    }

    /** One order: its lines in the table above, itself in the table below. */
    private final class Order {
        private final OrderCost cost;
        private final int row;
        private final Supplier supplier;
        private final Vendor vendor;
        private final Market.Charges charges;
        private final String currency;
        private final Expr rate;
        private final Expr onePlusMargin;

        Order(OrderCost cost, int row) {
            this.cost = cost;
            this.row = row;
            this.supplier = market.suppliers().get(cost.vendor());
            this.vendor = market.vendors().get(cost.vendor());
            this.charges = Market.charges(supplier);
            this.currency = supplier.currency().getCurrencyCode();
            this.rate = Inputs.rate(market.conversion(
                    supplier.currency(), market.book().settings().home()));
            Figure margin = market.margin(supplier);
            this.onePlusMargin = margin.isZero() ? Expr.of(1) : Inputs.onePlus(margin);
        }

        void write() {
            List<Line> lines = new ArrayList<>();
            for (LineCost line : cost.lines()) {
                lines.add(line(line, rows.next()));
                rows.skip(1);
            }
            Expr goods = Expr.sum(lines.stream().map(Line::goods).toList());
            Expr orderCharges = writeOrder(goods);
            Expr goodsCell = Expr.cell(sheet.name(), SheetNames.cell(row, 4), goods.value());
            for (Line line : lines) {
                Expr share = cost.goods().signum() == 0
                        ? orderCharges.over(Expr.of(lines.size()))
                        : orderCharges.times(line.goods()).over(goodsCell);
                writeShare(line, share);
            }
        }

        private Line line(LineCost line, int at) {
            Listing listing = purchase.listing(line);
            Offer offer = listing.offer();
            NumberFormat money =
                    NumberFormat.money(offer.currency().getCurrencyCode(), Currencies.minorDigits(offer.currency()));
            NumberFormat fine = NumberFormat.money(offer.currency().getCurrencyCode(), 4);
            sheet.text(at, 0, offer.item(), Look.LABEL);
            sheet.text(at, 1, offer.supplier(), Look.PLAIN, supplier.origin());
            sheet.text(at, 2, offer.pack(), Look.PLAIN, offer.origin());
            Expr packs = sheet.value(at, PACKS, Expr.of(line.line().packs()), NumberFormat.WHOLE, Look.CHOICE);
            Expr inPackUnit = packs.times(Expr.input(offer.packSize()));
            Expr perPackUnit = Inputs.basePer(offer.packUnit(), listing.density());
            Expr quantity = sheet.checked(
                    at, QUANTITY, times(inPackUnit, perPackUnit), line.quantity(), NumberFormat.QUANTITY, Look.PLAIN);
            Expr price = sheet.value(
                    at,
                    PRICE,
                    price(listing, inPackUnit),
                    fine,
                    Look.PLAIN,
                    offer.breaks().get(line.tier()).origin());
            Expr goods = sheet.checked(
                    at,
                    GOODS,
                    packs.times(price).rounded(Currencies.minorDigits(offer.currency())),
                    line.goodsQuoted(),
                    money,
                    Look.PLAIN);
            return charged(line, listing, at, quantity, times(goods, Inputs.rate(listing.toSupplier())));
        }

        private Line charged(LineCost line, Listing listing, int at, Expr quantity, Expr goods) {
            NumberFormat money = NumberFormat.money(currency, 2);
            Expr insurance = sheet.value(
                    at,
                    INSURANCE,
                    zeroIf(charges.insurance(), goods.times(Expr.input(charges.insurance()))),
                    money,
                    Look.PLAIN,
                    charges.insurance().origin());
            Expr byWeight = listing.isByPiece()
                    ? Expr.of(0)
                    : zeroIf(charges.freightPerKg(), quantity.times(Expr.input(charges.freightPerKg())));
            Expr freight = sheet.value(
                    at,
                    FREIGHT,
                    byWeight,
                    money,
                    Look.PLAIN,
                    charges.freightPerKg().origin());
            Figure rateOfDuty = listing.duty();
            Expr dutiable =
                    vendor.dutyBasis() == DutyBasis.CIF ? goods.plus(insurance).plus(freight) : goods;
            Expr duty = sheet.value(
                    at,
                    DUTY,
                    zeroIf(rateOfDuty, Expr.input(rateOfDuty).times(dutiable)),
                    money,
                    Look.PLAIN,
                    rateOfDuty.origin());
            Expr paid =
                    times(goods.plus(insurance).plus(freight), onePlusMargin).plus(duty);
            Expr alone =
                    sheet.value(at, ALONE, times(paid, rate), NumberFormat.money(home, 2), Look.PLAIN, rateOrigin());
            return new Line(line, at, quantity, goods, alone);
        }

        private Expr writeOrder(Expr goods) {
            NumberFormat money = NumberFormat.money(currency, 2);
            sheet.text(row, 0, supplier.name(), Look.LABEL, supplier.origin());
            sheet.text(row, 1, supplier.terms() == null ? "" : supplier.terms().name(), Look.PLAIN);
            sheet.text(row, 2, currency, Look.PLAIN);
            Expr rateCell = sheet.value(row, 3, rate, NumberFormat.FACTOR, Look.PLAIN, rateOrigin());
            Expr goodsCell = sheet.checked(row, 4, goods, cost.goods(), money, Look.PLAIN);
            Expr minimum = sheet.value(
                    row, 5, Inputs.orZero(supplier.minimumOrderValue()), money, Look.PLAIN, supplier.origin());
            Figure charge = supplier.smallOrderCharge();
            Expr small = charge == null ? Expr.of(0) : Expr.ifLess(goodsCell, minimum, Expr.input(charge), Expr.of(0));
            Expr smallCell = sheet.checked(row, 6, small, cost.smallOrderCharge(), money, Look.PLAIN);
            Expr freight = sheet.value(
                    row,
                    7,
                    Expr.input(charges.freightPerOrder()),
                    money,
                    Look.PLAIN,
                    charges.freightPerOrder().origin());
            Expr dutiable = vendor.dutyBasis() == DutyBasis.CIF ? freight.plus(smallCell) : smallCell;
            Expr duty = sheet.value(
                    row,
                    8,
                    zeroIf(charges.duty(), Expr.input(charges.duty()).times(dutiable)),
                    money,
                    Look.PLAIN,
                    charges.duty().origin());
            Expr all = times(times(freight.plus(smallCell), onePlusMargin).plus(duty), rateCell);
            return sheet.value(row, 9, all, NumberFormat.money(home, 2), Look.PLAIN);
        }

        private void writeShare(Line line, Expr share) {
            NumberFormat money = NumberFormat.money(home, 2);
            Expr shareCell = sheet.value(line.row(), SHARE, share, money, Look.PLAIN);
            Expr landed = sheet.checked(
                    line.row(),
                    LANDED,
                    line.alone().plus(shareCell),
                    line.cost().landed(),
                    money,
                    Look.TOTAL);
            Expr goods = sheet.checked(
                    line.row(),
                    GOODS_HOME,
                    times(line.goods(), rate),
                    line.cost().goods(),
                    money,
                    Look.PLAIN);
            cells.put(line.cost(), new LineCells(line.quantity(), landed, goods));
        }

        private Origin rateOrigin() {
            return market
                    .conversion(supplier.currency(), market.book().settings().home())
                    .legs()
                    .stream()
                    .findFirst()
                    .map(leg -> leg.rate().rate().origin())
                    .orElse(Origin.NONE);
        }
    }

    private record Line(LineCost cost, int row, Expr quantity, Expr goods, Expr alone) {}

    /** The price of a pack at the break that the quantity reaches: the whole ladder, so that it follows the packs. */
    private static Expr price(Listing listing, Expr inPackUnit) {
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

    private static Expr times(Expr left, Expr right) {
        boolean one = !right.isLive() && right.value().compareTo(BigDecimal.ONE) == 0;
        return one ? left : left.times(right);
    }

    /** Nothing where the rate is a zero that nobody typed; live where a person may change it. */
    private static Expr zeroIf(Figure rate, Expr otherwise) {
        return rate.isZero() && !rate.origin().isKnown() ? Expr.of(0) : otherwise;
    }
}
