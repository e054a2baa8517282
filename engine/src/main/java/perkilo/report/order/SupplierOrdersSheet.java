package perkilo.report.order;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.SupplierOrder;
import perkilo.purchasing.LineCost;
import perkilo.report.part.Lines;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/**
 * Supplier orders: one block for each order, in the supplier's currency, as it can be sent.
 *
 * @param sheet the sheet
 * @param orders the cells that other sheets refer to, in the order of the plan's orders
 * @param lines the cells of each line, by the very line of the plan
 */
record SupplierOrdersSheet(ResultSheet sheet, List<OrderCells> orders, IdentityHashMap<LineCost, LineCells> lines) {

    static final String NAME = "Supplier orders";

    /**
     * The cells of an order.
     *
     * @param goods in the supplier's currency
     * @param landed in home currency
     * @param row the block's first row, from zero
     */
    record OrderCells(Expr goods, Expr landed, int row) {}

    /**
     * The cells of a line.
     *
     * @param packs the choice
     * @param quantity in kilograms or pieces
     * @param landed in home currency
     */
    record LineCells(Expr packs, Expr quantity, Expr landed) {}

    static SupplierOrdersSheet of(OrderOutcome.Planned planned) {
        SheetBuilder sheet = new SheetBuilder(NAME)
                .widths(34, 14, 9, 14, 15, 16, 14, 15, 14, 15, 16, 16, 12, 12)
                .freeze(2, 1)
                .landscape();
        sheet.text(0, 0, NAME, Look.TITLE);
        sheet.text(
                1,
                0,
                "One block for each order. The packs are the choice: change them, or a price, a rate or a charge, and the amounts"
                        + " follow.",
                Look.HINT);
        List<OrderCells> orders = new ArrayList<>();
        IdentityHashMap<LineCost, LineCells> lines = new IdentityHashMap<>();
        Lines rows = new Lines(sheet, 3);
        QuoteDates dates =
                QuoteDates.writeForOrders(rows, planned.book().settings().priceAgeLimitDays());
        int row = rows.next() + 1;
        for (SupplierOrder order : planned.plan().orders()) {
            if (!orders.isEmpty()) {
                sheet.pageBreakBefore(row);
            }
            OrderBlock block = new OrderBlock(sheet, planned.market(), order, dates, row);
            orders.add(block.write(lines));
            row = block.next() + 2;
        }
        if (orders.isEmpty()) {
            sheet.text(row, 0, "Nothing has to be ordered.", Look.HINT);
        }
        return new SupplierOrdersSheet(sheet.build(), orders, lines);
    }
}
