package perkilo.report.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.decision.PlanAndActual;
import perkilo.decision.PlanAndActual.OfItem;
import perkilo.decision.PlanAndActual.Used;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** What a run took of each item, beside its standard. */
public final class ActualTable {

    private static final int WIDTH = 14;
    private static final int FINE = 4;

    private final Column<OfItem> item = Column.<OfItem>of("item", "Item")
            .words(OfItem::item)
            .look(Look.LABEL)
            .width(34)
            .link(OfItem::origin)
            .totalWords("Together")
            .json();

    private final Column<OfItem> unit =
            Column.<OfItem>of("unit", "Unit").words(OfItem::unit).json();

    private final Column<OfItem> standard;
    private final Column<OfItem> actual;
    private final Column<OfItem> standardPrice;
    private final Column<OfItem> paid;
    private final Column<OfItem> actualPrice;
    private final Column<OfItem> quantityVariance;
    private final Column<OfItem> priceVariance;
    private final Column<OfItem> exchange;

    /**
     * The columns.
     *
     * @param home code of the home currency
     */
    public ActualTable(String home) {
        NumberFormat money = NumberFormat.money(home, 2);
        NumberFormat price = NumberFormat.money(home, FINE);
        standard = amount("standardQuantity", "Standard quantity", OfItem::standard, NumberFormat.QUANTITY);
        actual = amount("actualQuantity", "Actual quantity", OfItem::actual, NumberFormat.QUANTITY)
                .formula(this::actualOf);
        standardPrice = amount("standardPrice", "Standard price", OfItem::standardPrice, price)
                .words(one -> one.standardPrice() == null ? "not planned" : null)
                .wordsLook(Look.HINT);
        paid = amount("paid", "Paid, at the plan's rates", OfItem::paid, money).formula(this::paidOf);
        actualPrice = Column.<OfItem>of("actualPrice", "Actual price")
                .formula(row -> row.entry().actual().signum() == 0
                        ? null
                        : row.ref(paid()).over(row.ref(actual())))
                .format(price)
                .width(WIDTH);
        quantityVariance = amount("quantityVariance", "Quantity variance", OfItem::quantityVariance, money)
                .formula(row -> row.has(standardPrice())
                        ? row.ref(actual()).minus(row.ref(standard())).times(row.ref(standardPrice()))
                        : null)
                .sum();
        priceVariance = amount("priceVariance", "Price variance", OfItem::priceVariance, money)
                .formula(row -> row.has(standardPrice())
                        ? row.ref(paid()).minus(row.ref(actual()).times(row.ref(standardPrice())))
                        : null)
                .sum();
        exchange = amount("exchangeRate", "Exchange rate", OfItem::exchange, money)
                .formula(this::exchangeOf)
                .sum();
    }

    private static Column<OfItem> amount(
            String key, String heading, Function<OfItem, @Nullable BigDecimal> value, NumberFormat format) {
        return Column.<OfItem>of(key, heading)
                .value(value)
                .format(format)
                .width(WIDTH)
                .json(one -> value.apply(one));
    }

    private Column<OfItem> standard() {
        return standard;
    }

    private Column<OfItem> actual() {
        return actual;
    }

    private Column<OfItem> standardPrice() {
        return standardPrice;
    }

    private Column<OfItem> paid() {
        return paid;
    }

    /** The table as the sheet shows it. */
    Table<OfItem> onSheet() {
        return Table.of(
                item,
                unit,
                standard,
                actual,
                standardPrice,
                paid,
                actualPrice,
                quantityVariance,
                priceVariance,
                exchange);
    }

    /** The items of a run as JSON shows them. */
    public Table.Filled<OfItem> inJson(PlanAndActual run) {
        return Table.of(item, unit, standard, actual, standardPrice, paid, quantityVariance, priceVariance, exchange)
                .with(run.items());
    }

    private Expr actualOf(Row<OfItem> row) {
        if (row.entry().uses().isEmpty()) {
            return row.ref(standard);
        }
        return Expr.sum(row.entry().uses().stream().map(ActualTable::quantity).toList());
    }

    private static Expr quantity(Used use) {
        Expr typed = Expr.input(use.quantity());
        return use.perUnit().compareTo(BigDecimal.ONE) == 0 ? typed : typed.times(Expr.of(use.perUnit()));
    }

    private Expr paidOf(Row<OfItem> row) {
        if (row.entry().uses().isEmpty()) {
            return row.ref(actual).times(row.ref(standardPrice));
        }
        List<Expr> parts = new ArrayList<>();
        for (Used use : row.entry().uses()) {
            Figure amount = use.paid();
            if (amount != null) {
                parts.add(times(Expr.input(amount), use.toHome()));
            } else if (row.has(standardPrice)) {
                parts.add(quantity(use).times(row.ref(standardPrice)));
            }
        }
        return parts.isEmpty() ? Expr.of(0) : Expr.sum(parts);
    }

    private Expr exchangeOf(Row<OfItem> row) {
        List<Expr> parts = new ArrayList<>();
        for (Used use : row.entry().uses()) {
            Figure amount = use.paid();
            BigDecimal change = use.toHomeThen().subtract(use.toHome());
            if (amount != null && change.signum() != 0) {
                parts.add(times(Expr.input(amount), change));
            }
        }
        return parts.isEmpty() ? Expr.of(0) : Expr.sum(parts);
    }

    private static Expr times(Expr amount, BigDecimal factor) {
        return factor.compareTo(BigDecimal.ONE) == 0 ? amount : amount.times(Expr.of(factor));
    }
}
