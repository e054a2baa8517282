package perkilo.report.cost;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import perkilo.costing.Market;
import perkilo.costing.Purchase;
import perkilo.model.Supplier;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.OrderCost;
import perkilo.report.part.LandedColumns;
import perkilo.report.part.Landing;
import perkilo.report.part.Lines;
import perkilo.report.part.PackCheck;
import perkilo.report.part.PurchaseLine;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/**
 * The part of a block with the purchases and their landed cost: a table of lines, and below it a table of orders, which
 * refer to each other.
 */
final class PurchasePart {

    private final LandedColumns landed;
    private final Column<PurchaseLine> goodsAtTheRate;
    private final Column<Order> orderGoods;
    private final Column<Order> rate;
    private final Column<Order> small;
    private final Column<Order> freight;
    private final Column<Order> orderCharges;
    private final PackCheck packCheck;
    private final Column<Order> minimumCheck;
    private final Placed<PurchaseLine> lines;
    private final Placed<Order> orders;
    private final IdentityHashMap<LineCost, PurchaseLine> ofCost = new IdentityHashMap<>();
    private final IdentityHashMap<PurchaseLine, Order> ofLine = new IdentityHashMap<>();

    /** An order and its lines. */
    private record Order(OrderCost cost, Landing landing, List<PurchaseLine> lines) {

        Supplier supplier() {
            return landing.supplier();
        }

        NumberFormat money() {
            return NumberFormat.money(supplier().currency().getCurrencyCode(), 2);
        }
    }

    private PurchasePart(Lines sheet, Market market, Purchase purchase, QuoteDates dates) {
        String home = market.book().settings().home().getCurrencyCode();
        List<Order> all = orders(market, purchase);
        List<PurchaseLine> bought = new ArrayList<>();
        for (Order order : all) {
            for (PurchaseLine line : order.lines()) {
                bought.add(line);
                ofCost.put(line.cost(), line);
                ofLine.put(line, order);
            }
        }
        landed = new LandedColumns(home, this::orderOf);
        packCheck = new PackCheck(landed.packs);
        goodsAtTheRate = Column.<PurchaseLine>of("goodsHome", "Goods at the rate, " + home)
                .value(line -> line.cost().goods())
                .formula(row ->
                        Landing.times(landed().goods(row), row.entry().landing().rate()))
                .format(NumberFormat.money(home, 2));
        orderGoods =
                money("goods", "Goods").value(order -> order.cost().goods()).formula(this::goodsOf);
        rate = Column.<Order>of("rate", "Rate to " + home)
                .formula(row -> row.entry().landing().rate())
                .format(NumberFormat.FACTOR)
                .link(order -> order.landing().rateOrigin());
        Column<Order> minimum = money("minimumOrderValue", "Minimum order value")
                .formula(row -> row.entry().landing().minimumOrderValue())
                .link(order -> order.supplier().origin());
        small = money("smallOrderCharge", "Small-order charge")
                .value(order -> order.cost().smallOrderCharge())
                .formula(row -> row.entry().landing().smallOrderCharge(row.ref(goodsOfOrders()), row.ref(minimum)));
        freight = money("freightPerOrder", "Freight per order")
                .formula(row -> row.entry().landing().freightPerOrder())
                .link(charge(Market.Charges::freightPerOrder));
        Column<Order> duty = money("dutyOnCharges", "Duty on charges")
                .value(order -> order.cost().dutyOnCharges())
                .formula(this::dutyOf);
        orderCharges = Column.<Order>of("orderCharges", "Order charges before duty, " + home)
                .formula(row -> row.entry()
                        .landing()
                        .orderCharges(row.ref(freightOfOrders()), row.ref(smallOrders()), row.ref(rateOfOrders())))
                .format(NumberFormat.money(home, 2));
        minimumCheck = Column.<Order>of("minimumCheck", "")
                .withoutHeading()
                .sentence(row -> belowMinimum(row, minimum))
                .look(Look.HINT);
        minimumCheck.mark(Mark.attention(minimumCheck, Look.ERROR));
        lines = sheet.place(linesTable(dates), bought);
        orders = Table.of(
                        Column.<Order>of("supplier", "Supplier")
                                .words(order -> order.supplier().name())
                                .look(Look.LABEL)
                                .link(order -> order.supplier().origin()),
                        Column.<Order>of("terms", "Delivery term").words(order -> terms(order.supplier())),
                        Column.<Order>of("currency", "Currency")
                                .words(order -> order.supplier().currency().getCurrencyCode()),
                        rate,
                        orderGoods,
                        minimum,
                        small,
                        freight,
                        orderCharges,
                        duty,
                        minimumCheck)
                .at(sheet.sheet(), lines.next() + 2, all);
    }

    /** Writes the part; null if nothing has to be bought. */
    static PurchasePart write(Lines sheet, Market market, Purchase purchase, QuoteDates dates) {
        sheet.section("Purchase");
        PurchasePart part = new PurchasePart(sheet, market, purchase, dates);
        if (purchase.cost().orders().isEmpty()) {
            sheet.hint("Nothing has to be bought.");
            return part;
        }
        sheet.write(part.lines);
        sheet.skip(1).section("Orders");
        sheet.write(part.orders);
        return part;
    }

    /** In kilograms or pieces. */
    Expr quantity(LineCost line) {
        return lines.ref(line(line), landed.quantity);
    }

    /** In home currency. */
    Expr landed(LineCost line) {
        return lines.ref(line(line), landed.landed);
    }

    /** In home currency. */
    Expr goods(LineCost line) {
        return lines.ref(line(line), goodsAtTheRate);
    }

    /** What moves with a line's price: goods, and what is charged in per cent of them; in home currency. */
    Expr priced(LineCost cost) {
        PurchaseLine line = line(cost);
        Expr goods = landed.goods(new Row<>(line, lines.indexOf(line), lines));
        return line.landing().movesWithPrice(line.listing(), goods, lines.ref(line, landed.insurance));
    }

    private PurchaseLine line(LineCost line) {
        return Objects.requireNonNull(ofCost.get(line));
    }

    private static List<Order> orders(Market market, Purchase purchase) {
        List<Order> orders = new ArrayList<>();
        for (OrderCost cost : purchase.cost().orders()) {
            Landing landing = new Landing(market, market.suppliers().get(cost.vendor()));
            List<PurchaseLine> lines = new ArrayList<>();
            for (LineCost line : cost.lines()) {
                lines.add(new PurchaseLine(line, purchase.listing(line), landing));
            }
            orders.add(new Order(cost, landing, lines));
        }
        return orders;
    }

    private Table<PurchaseLine> linesTable(QuoteDates dates) {
        List<Column<PurchaseLine>> columns = new ArrayList<>(List.of(
                Column.<PurchaseLine>of("item", "Item")
                        .words(line -> line.listing().offer().item())
                        .look(Look.LABEL),
                Column.<PurchaseLine>of("supplier", "Supplier")
                        .words(line -> line.listing().offer().supplier())
                        .link(line -> line.landing().supplier().origin()),
                Column.<PurchaseLine>of("pack", "Pack")
                        .words(line -> line.listing().offer().pack())
                        .link(line -> line.listing().offer().origin())));
        columns.addAll(landed.all());
        columns.add(goodsAtTheRate);
        columns.add(dates.quotedOn(
                "quotedOn", "Quoted on", line -> line.listing().offer().quotedOn()));
        columns.add(dates.validUntil(
                "validUntil", "Valid until", line -> line.listing().offer().validUntil()));
        columns.add(packCheck.words);
        return new Table<>(columns);
    }

    /** Words if an order's goods are below the value that the supplier delivers for. */
    private List<ResultSheet.Part> belowMinimum(Row<Order> row, Column<Order> minimum) {
        Supplier supplier = row.entry().supplier();
        if (supplier.minimumOrderValue() == null || supplier.smallOrderCharge() != null) {
            return List.of();
        }
        return PackCheck.belowMinimumValue(row.ref(orderGoods), row.ref(minimum));
    }

    /** How many lines and orders a person has changed to what cannot be ordered. */
    Expr faults() {
        return packCheck.count(lines).plus(PackCheck.filled(orders, minimumCheck));
    }

    private Expr goodsOf(Row<Order> row) {
        List<Expr> goods = new ArrayList<>();
        for (PurchaseLine line : row.entry().lines()) {
            goods.add(landed.goods(new Row<>(line, lines.indexOf(line), lines)));
        }
        return Expr.sum(goods);
    }

    private Expr dutyOf(Row<Order> row) {
        List<Expr> duty = new ArrayList<>();
        for (PurchaseLine line : row.entry().lines()) {
            duty.add(lines.ref(line, landed.dutyOnShare));
        }
        return Expr.sum(duty);
    }

    private Landing.OrderCells orderOf(PurchaseLine line) {
        Order order = Objects.requireNonNull(ofLine.get(line));
        return new Landing.OrderCells(
                orders.ref(order, orderGoods),
                orders.ref(order, freight),
                orders.ref(order, small),
                orders.ref(order, orderCharges),
                orders.ref(order, rate),
                order.lines().size());
    }

    private LandedColumns landed() {
        return landed;
    }

    private Column<Order> goodsOfOrders() {
        return orderGoods;
    }

    private Column<Order> rateOfOrders() {
        return rate;
    }

    private Column<Order> smallOrders() {
        return small;
    }

    private Column<Order> freightOfOrders() {
        return freight;
    }

    private static Column<Order> money(String key, String heading) {
        return Column.<Order>of(key, heading).format(Order::money);
    }

    private static Function<Order, Origin> charge(Function<Market.Charges, Figure> which) {
        return order -> which.apply(order.landing().charges()).origin();
    }

    private static String terms(Supplier supplier) {
        return supplier.terms() == null ? "" : supplier.terms().name();
    }

    /** The sum of all lines of an item. */
    Expr sum(List<LineCost> ofItem, Function<LineCost, Expr> which) {
        List<Expr> all = new ArrayList<>();
        for (LineCost line : ofItem) {
            all.add(which.apply(line));
        }
        return Expr.sum(all);
    }
}
