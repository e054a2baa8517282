package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Market;
import perkilo.orderplan.SupplierOrder;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.OrderCost;
import perkilo.report.part.LandedColumns;
import perkilo.report.part.Landing;
import perkilo.report.part.PurchaseLine;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** The totals of an order: a row for each figure below its lines, in their column of goods. */
final class OrderSums {

    private static final Column<Sum> NAME =
            Column.<Sum>of("name", "").words(Sum::name).look(Sum::nameLook).link(Sum::link);
    private static final Column<Sum> FIGURE = Column.<Sum>of("figure", "")
            .value(Sum::engine)
            .formula(row -> row.entry().live().get())
            .format(Sum::format)
            .look(Sum::look)
            .link(Sum::figureLink);

    private final Placed<PurchaseLine> lines;
    private final LandedColumns columns;
    private final SupplierOrder order;
    private final Landing landing;
    private final NumberFormat money;
    private final List<Sum> sums = new ArrayList<>();
    private final Sum goods;
    private final @Nullable Sum small;
    private final Sum perOrder;
    private final Sum duty;
    private final Sum rate;
    private final Sum landed;
    private final Placed<Sum> names;
    private final Placed<Sum> figures;

    /**
     * A figure of the order.
     *
     * @param engine the value that the engine computed by itself; null if it did not
     * @param link the cell that its name leads to
     * @param figureLink the cell that the figure leads to
     */
    private record Sum(
            String name,
            Look nameLook,
            Origin link,
            Supplier<Expr> live,
            @Nullable BigDecimal engine,
            NumberFormat format,
            Look look,
            Origin figureLink) {}

    /**
     * The figures of an order; nothing is written yet.
     *
     * @param lines of the order, with their place on the sheet
     * @param home code of the home currency
     */
    OrderSums(Placed<PurchaseLine> lines, LandedColumns columns, SupplierOrder order, Landing landing, String home) {
        this.lines = lines;
        this.columns = columns;
        this.order = order;
        this.landing = landing;
        String currency = order.supplier().currency().getCurrencyCode();
        this.money = NumberFormat.money(currency, 2);
        OrderCost cost = order.cost();
        Market.Charges rates = landing.charges();
        goods = add("Goods", this::goodsOfLines, cost.goods(), Origin.NONE);
        small = smallOrder();
        Sum insurance = add(
                ChargeFacts.INSURANCE,
                () -> lines.sum(columns.insurance),
                rates.insurance().origin());
        perOrder = add(
                "Freight for the order",
                landing::freightPerOrder,
                null,
                rates.freightPerOrder().origin());
        Sum freight = add(ChargeFacts.FREIGHT, () -> cell(perOrder).plus(lines.sum(columns.freight)), Origin.NONE);
        add(
                "Goods and charges, " + currency,
                () -> goods().plus(smallOrderCharge()).plus(cell(insurance)).plus(cell(freight)),
                cost.goods().add(cost.charges()),
                Origin.NONE);
        Sum onCharges = add("Duty on charges", () -> lines.sum(columns.dutyOnShare), cost.dutyOnCharges(), Origin.NONE);
        duty = add(ChargeFacts.DUTY, () -> lines.sum(columns.duty).plus(cell(onCharges)), Origin.NONE);
        rate = add(new Sum(
                "Rate to " + home,
                Look.LABEL,
                Origin.NONE,
                landing::rate,
                null,
                NumberFormat.FACTOR,
                Look.PLAIN,
                landing.rateOrigin()));
        landed = add(new Sum(
                "Landed, " + home,
                Look.TOTAL,
                Origin.NONE,
                () -> lines.sum(columns.landed),
                cost.landed(),
                NumberFormat.money(home, 2),
                Look.KEY,
                Origin.NONE));
        names = Table.of(NAME).withoutHeadings(lines.sheet(), lines.next(), sums);
        figures = Table.of(FIGURE).withoutHeadings(lines.sheet(), lines.next(), lines.column(columns.invoiced), sums);
    }

    /** Writes the figures. */
    void write() {
        names.write();
        figures.write();
    }

    /** The row after the figures, from zero. */
    int next() {
        return figures.next();
    }

    /** The goods, in the supplier's currency. */
    Expr goods() {
        return cell(goods);
    }

    /** The landed cost of the order, in home currency. */
    Expr landed() {
        return cell(landed);
    }

    /** The duty on the order, in home currency. */
    Expr dutyHome() {
        return Landing.times(cell(duty), cell(rate));
    }

    /** The figures that the order's lines share. */
    Landing.OrderCells shared() {
        Expr freight = cell(perOrder);
        Expr charge = smallOrderCharge();
        Expr charges = landing.orderCharges(freight, charge, cell(rate));
        return new Landing.OrderCells(
                goods(), freight, charge, charges, cell(rate), lines.rows().size());
    }

    private Expr cell(Sum sum) {
        return figures.ref(sum, FIGURE);
    }

    private Sum add(Sum sum) {
        sums.add(sum);
        return sum;
    }

    private Sum add(String name, Supplier<Expr> live, @Nullable BigDecimal engine, Origin link) {
        return add(new Sum(name, Look.LABEL, link, live, engine, money, Look.PLAIN, Origin.NONE));
    }

    private Sum add(Column<SupplierOrder> fact, Supplier<Expr> live, Origin link) {
        return add(fact.heading(), live, fact.valueOf(order), link);
    }

    private @Nullable Sum smallOrder() {
        Figure minimum = order.supplier().minimumOrderValue();
        if (minimum == null) {
            return null;
        }
        Sum minimumValue = add("Minimum order value", landing::minimumOrderValue, null, minimum.origin());
        return add(
                ChargeFacts.SMALL_ORDER,
                () -> landing.smallOrderCharge(goods(), cell(minimumValue)),
                order.supplier().origin());
    }

    private Expr smallOrderCharge() {
        return small == null ? Expr.of(0) : cell(small);
    }

    private Expr goodsOfLines() {
        List<Expr> goodsOfLines = new ArrayList<>();
        for (int index = 0; index < lines.rows().size(); index++) {
            goodsOfLines.add(columns.goods(new Row<>(lines.rows().get(index), index, lines)));
        }
        return Expr.sum(goodsOfLines);
    }
}
