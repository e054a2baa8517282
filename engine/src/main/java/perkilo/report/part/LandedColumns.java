package perkilo.report.part;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import perkilo.offers.Offer;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Row;
import perkilo.units.Currencies;

/**
 * The columns of a purchase line: packs, quantity, price, goods, charges of the line, its share of the order's charges,
 * and its landed cost.
 */
public final class LandedColumns {

    private static final int PRICE_DIGITS = 4;

    /** The chosen number of packs: a plain value. */
    public final Column<PurchaseLine> packs = Column.<PurchaseLine>of("packs", "Packs")
            .value(line -> BigDecimal.valueOf(line.cost().line().packs()))
            .format(NumberFormat.WHOLE)
            .look(Look.CHOICE)
            .json(line -> line.cost().line().packs());

    /** In kilograms or pieces. */
    public final Column<PurchaseLine> quantity = Column.<PurchaseLine>of("quantity", "Quantity (kg or pieces)")
            .value(line -> line.cost().quantity())
            .formula(row -> Landing.quantity(row.entry().listing(), inPackUnit(row)))
            .format(line -> line.listing().isByPiece() ? NumberFormat.WHOLE : NumberFormat.QUANTITY)
            .json();

    /** At the price break of the quantity, in the offer's currency. */
    public final Column<PurchaseLine> price = Column.<PurchaseLine>of("pricePerPack", "Price per pack")
            .formula(row -> Landing.price(row.entry().listing(), inPackUnit(row)))
            .format(line -> NumberFormat.money(
                    code(line),
                    Math.max(PRICE_DIGITS, Currencies.minorDigits(offer(line).currency()))))
            .link(line -> offer(line).breaks().get(line.cost().tier()).origin());

    /** As invoiced, in the offer's currency. */
    public final Column<PurchaseLine> invoiced = Column.<PurchaseLine>of("goods", "Goods as invoiced")
            .value(line -> line.cost().goodsQuoted())
            .formula(row -> Expr.typed(row.ref(packs))
                    .times(row.ref(price))
                    .rounded(Currencies.minorDigits(offer(row.entry()).currency())))
            .format(line -> NumberFormat.money(
                    code(line), Currencies.minorDigits(offer(line).currency())))
            .json();

    /** In the supplier's currency. */
    public final Column<PurchaseLine> insurance = charge(
            "insurance",
            "Insurance",
            row -> row.entry().landing().insurance(goods(row)),
            line -> line.landing().charges().insurance().origin());

    /** In the supplier's currency. */
    public final Column<PurchaseLine> freight = charge(
            "freightByWeight",
            "Freight by weight",
            row -> row.entry().landing().freightByWeight(row.entry().listing(), row.ref(quantity)),
            line -> line.landing().charges().freightPerKg().origin());

    /** In the supplier's currency. */
    public final Column<PurchaseLine> duty = charge(
            "duty",
            "Duty on the line",
            row -> row.entry().landing().duty(row.entry().listing(), goods(row), row.ref(insurance), row.ref(freight)),
            line -> line.listing().duty().origin());

    /** The cost of the line alone, in home currency. */
    public final Column<PurchaseLine> alone;

    /** The duty on the line's share of the order's charges, in the supplier's currency. */
    public final Column<PurchaseLine> dutyOnShare;

    /** The share of the order's charges with the duty on it, in home currency. */
    public final Column<PurchaseLine> share;

    /** The landed cost of the line, in home currency. */
    public final Column<PurchaseLine> landed;

    /**
     * The columns.
     *
     * @param home code of the home currency
     * @param orderOf the order of a line
     */
    public LandedColumns(String home, Function<PurchaseLine, Landing.OrderCells> orderOf) {
        NumberFormat inHome = NumberFormat.money(home, 2);
        alone = Column.<PurchaseLine>of("line", "Line, " + home)
                .formula(row -> row.entry()
                        .landing()
                        .lineAlone(goods(row), row.ref(insurance), row.ref(freight), row.ref(duty)))
                .format(inHome)
                .link(line -> line.landing().rateOrigin());
        dutyOnShare = charge(
                "dutyOnShare",
                "Duty on share of order charges",
                row -> row.entry().landing().dutyOnShare(row.entry().listing(), goods(row), orderOf.apply(row.entry())),
                line -> line.listing().duty().origin());
        share = Column.<PurchaseLine>of("share", "Share of order charges, " + home)
                .formula(row -> share(row, orderOf.apply(row.entry())))
                .format(inHome);
        landed = Column.<PurchaseLine>of("landedHome", "Landed, " + home)
                .value(line -> line.cost().landed())
                .formula(row -> row.ref(alone).plus(row.ref(share)))
                .format(inHome)
                .look(Look.TOTAL)
                .json();
    }

    /** All of them, in their order. */
    public List<Column<PurchaseLine>> all() {
        return List.of(packs, quantity, price, invoiced, insurance, freight, duty, alone, dutyOnShare, share, landed);
    }

    /** The goods of a line in the supplier's currency. */
    public Expr goods(Row<PurchaseLine> row) {
        return Landing.invoiced(row.entry().listing(), row.ref(invoiced));
    }

    private Expr share(Row<PurchaseLine> row, Landing.OrderCells order) {
        Expr charges = Landing.share(order.charges(), goods(row), order);
        return charges.plus(Landing.times(row.ref(dutyOnShare), order.rate()));
    }

    private Expr inPackUnit(Row<PurchaseLine> row) {
        return Landing.inPackUnit(row.entry().listing(), Expr.typed(row.ref(packs)));
    }

    private static Column<PurchaseLine> charge(
            String key,
            String heading,
            Function<Row<PurchaseLine>, Expr> formula,
            Function<PurchaseLine, Origin> link) {
        return Column.<PurchaseLine>of(key, heading)
                .formula(row -> formula.apply(row))
                .format(line ->
                        NumberFormat.money(line.landing().supplier().currency().getCurrencyCode(), 2))
                .link(link);
    }

    private static Offer offer(PurchaseLine line) {
        return line.listing().offer();
    }

    private static String code(PurchaseLine line) {
        return offer(line).currency().getCurrencyCode();
    }
}
