package perkilo.report.cost;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.costing.Purchase;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.OrderCost;
import perkilo.report.part.LandedLine;
import perkilo.report.part.Landing;
import perkilo.report.part.QuoteDates;
import perkilo.report.part.Rows;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/** The part of a block that says what is bought, from whom, and what it costs once it is here. */
final class PurchasePart {

    private static final int PACKS = 3;
    private static final int GOODS_HOME = 13;
    private static final int DATES = 14;

    private final Rows rows;
    private final SheetBuilder sheet;
    private final Market market;
    private final Purchase purchase;
    private final QuoteDates dates;
    private final String home;
    private final IdentityHashMap<LineCost, LineCells> cells = new IdentityHashMap<>();

    /**
     * A purchase line's cells.
     *
     * @param quantity in kilograms or pieces
     * @param landed in home currency
     * @param goods in home currency
     */
    record LineCells(Expr quantity, Expr landed, Expr goods) {}

    PurchasePart(Rows rows, Market market, Purchase purchase, QuoteDates dates) {
        this.rows = rows;
        this.sheet = rows.sheet();
        this.market = market;
        this.purchase = purchase;
        this.dates = dates;
        this.home = market.book().settings().home().getCurrencyCode();
    }

    /** Writes the part. */
    IdentityHashMap<LineCost, LineCells> write() {
        rows.section("Purchase", Look.SECTION);
        if (purchase.cost().orders().isEmpty()) {
            rows.section("Nothing has to be bought.", Look.HINT);
            return cells;
        }
        List<String> heads = new ArrayList<>(List.of("Item", "Supplier", "Pack"));
        heads.addAll(LandedLine.heads(home));
        heads.add("Goods at the rate, " + home);
        heads.addAll(QuoteDates.HEADS);
        rows.heads(heads.toArray(new String[0]));
        int first = rows.next();
        int ordersFirst = first + purchase.cost().lines().size() + 3;
        int order = ordersFirst;
        for (OrderCost cost : purchase.cost().orders()) {
            new Order(cost, order++).write();
        }
        dates.mark(first, rows.next() - 1, DATES);
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
        private final Landing landing;
        private final NumberFormat money;

        Order(OrderCost cost, int row) {
            this.cost = cost;
            this.row = row;
            this.supplier = market.suppliers().get(cost.vendor());
            this.landing = new Landing(market, supplier);
            this.money = NumberFormat.money(supplier.currency().getCurrencyCode(), 2);
        }

        void write() {
            List<LandedLine> lines = new ArrayList<>();
            for (LineCost line : cost.lines()) {
                lines.add(line(line, rows.next()));
                rows.skip(1);
            }
            Expr goods = Expr.sum(lines.stream().map(LandedLine::goods).toList());
            Expr orderCharges = writeOrder(goods);
            Expr goodsCell = Expr.cell(sheet.name(), SheetNames.cell(row, 4), goods.value());
            for (LandedLine line : lines) {
                writeShare(line, Landing.share(orderCharges, line.goods(), goodsCell, lines.size()));
            }
        }

        private LandedLine line(LineCost line, int at) {
            Listing listing = purchase.listing(line);
            Offer offer = listing.offer();
            sheet.text(at, 0, offer.item(), Look.LABEL);
            sheet.text(at, 1, offer.supplier(), Look.PLAIN, supplier.origin());
            sheet.text(at, 2, offer.pack(), Look.PLAIN, offer.origin());
            dates.write(at, DATES, offer);
            return LandedLine.write(sheet, at, PACKS, landing, line, listing, home);
        }

        private Expr writeOrder(Expr goods) {
            Market.Charges charges = landing.charges();
            sheet.text(row, 0, supplier.name(), Look.LABEL, supplier.origin());
            sheet.text(row, 1, supplier.terms() == null ? "" : supplier.terms().name(), Look.PLAIN);
            sheet.text(row, 2, supplier.currency().getCurrencyCode(), Look.PLAIN);
            Expr rate = sheet.value(row, 3, landing.rate(), NumberFormat.FACTOR, Look.PLAIN, landing.rateOrigin());
            Expr goodsCell = sheet.checked(row, 4, goods, cost.goods(), money, Look.PLAIN);
            Expr minimum = sheet.value(row, 5, landing.minimumOrderValue(), money, Look.PLAIN, supplier.origin());
            Expr small = sheet.checked(
                    row, 6, landing.smallOrderCharge(goodsCell, minimum), cost.smallOrderCharge(), money, Look.PLAIN);
            Expr freight = sheet.value(
                    row,
                    7,
                    landing.freightPerOrder(),
                    money,
                    Look.PLAIN,
                    charges.freightPerOrder().origin());
            Expr duty = sheet.value(
                    row,
                    8,
                    landing.dutyOnCharges(freight, small),
                    money,
                    Look.PLAIN,
                    charges.duty().origin());
            Expr all = landing.orderCharges(freight, small, duty, rate);
            return sheet.value(row, 9, all, NumberFormat.money(home, 2), Look.PLAIN);
        }

        private void writeShare(LandedLine line, Expr share) {
            Expr landed = line.writeShare(sheet, share, home);
            Expr goods = sheet.checked(
                    line.row(),
                    GOODS_HOME,
                    Landing.times(line.goods(), landing.rate()),
                    line.cost().goods(),
                    NumberFormat.money(home, 2),
                    Look.PLAIN);
            cells.put(line.cost(), new LineCells(line.quantity(), landed, goods));
        }
    }
}
