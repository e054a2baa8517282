package perkilo.report.order;

import java.util.List;
import java.util.function.Function;
import perkilo.orderplan.Horizon;
import perkilo.orderplan.LotUse;
import perkilo.orderplan.StockFlow;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/**
 * A lot with a leftover at the end that can be used later.
 *
 * @param flow the stock that it belongs to
 * @param lot the lot
 */
record Leftover(StockFlow flow, LotUse lot) {

    /** The leftovers of an item. */
    static List<Leftover> of(StockFlow flow, Horizon horizon) {
        return flow.leftovers(horizon).stream()
                .map(lot -> new Leftover(flow, lot))
                .toList();
    }

    /** The table for JSON. */
    static Table<Leftover> table() {
        return table(NumberFormat.GENERAL, leftover -> Expr.of(0), leftover -> Expr.of(0));
    }

    /**
     * The table.
     *
     * @param left the cell with the quantity left in the lot
     * @param price the cell with the item's lowest listed price
     */
    static Table<Leftover> table(NumberFormat money, Function<Leftover, Expr> left, Function<Leftover, Expr> price) {
        Column<Leftover> quantity = Column.<Leftover>of("quantity", "Quantity")
                .value(leftover -> leftover.lot().left())
                .formula(row -> left.apply(row.entry()))
                .format(leftover -> StockLots.format(leftover.flow()))
                .json();
        return Table.of(
                Column.<Leftover>of("item", "Item")
                        .words(leftover -> leftover.flow().item().name())
                        .look(Look.LABEL),
                quantity,
                QuoteDates.<Leftover>dates(
                                "usableUntil",
                                "Usable until",
                                leftover -> leftover.lot().lastDay())
                        .words(leftover -> leftover.lot().lastDay() == null ? StockLots.until(leftover.lot()) : null)
                        .json(leftover -> leftover.lot().lastDay()),
                Column.<Leftover>of("unit", "Unit")
                        .words(leftover -> leftover.flow().item().item().unit()),
                Column.<Leftover>of("value", "At the lowest listed price")
                        .formula(row -> row.ref(quantity).times(price.apply(row.entry())))
                        .format(money),
                Column.<Leftover>of("bought", "")
                        .json(leftover -> leftover.lot().isBought())
                        .notOnSheet());
    }
}
