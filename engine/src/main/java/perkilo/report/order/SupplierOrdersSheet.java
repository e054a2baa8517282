package perkilo.report.order;

import java.util.IdentityHashMap;
import java.util.Objects;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.SupplierOrder;
import perkilo.origin.Origin;
import perkilo.purchasing.LineCost;
import perkilo.report.part.Lines;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Expr;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/**
 * Supplier orders: one block for each order with all its costs, in the supplier's currency.
 *
 * @param sheet the sheet
 * @param orders the cells of each order, by the identity of the order in the plan
 * @param lines the cells of each line, by the identity of the line in the plan
 */
record SupplierOrdersSheet(
        ResultSheet sheet,
        IdentityHashMap<SupplierOrder, OrderCells> orders,
        IdentityHashMap<LineCost, LineCells> lines) {

    static final String NAME = "Supplier orders";

    /**
     * The cells of an order.
     *
     * @param goods in the supplier's currency
     * @param landed in home currency
     * @param dutyHome the duty in it, in home currency
     * @param title where its block begins
     */
    record OrderCells(Expr goods, Expr landed, Expr dutyHome, Origin title) {}

    /**
     * The cells of a line.
     *
     * @param packs the number of packs, which the plan chose
     * @param quantity in kilograms or pieces
     * @param price of one pack, in the offer's currency
     * @param landed in home currency
     */
    record LineCells(Expr packs, Expr quantity, Expr price, Expr landed) {}

    /** The cells of a line of the plan. */
    LineCells line(LineCost line) {
        return Objects.requireNonNull(lines.get(line));
    }

    static SupplierOrdersSheet of(OrderOutcome.Planned planned) {
        SheetBuilder sheet = new SheetBuilder(NAME).freeze(2, 1).landscape();
        sheet.title(0, NAME);
        sheet.hint(
                1,
                "What each order costs you. If you change the packs, a price, a rate or a charge, the amounts follow, also on"
                        + " Orders to send, which shows each order as the supplier gets it.");
        IdentityHashMap<SupplierOrder, OrderCells> orders = new IdentityHashMap<>();
        IdentityHashMap<LineCost, LineCells> lines = new IdentityHashMap<>();
        Lines top = new Lines(sheet, 3);
        QuoteDates dates =
                QuoteDates.writeForOrders(top, planned.book().settings().priceAgeLimitDays());
        int row = top.next() + 1;
        for (SupplierOrder order : planned.plan().orders()) {
            if (!orders.isEmpty()) {
                sheet.pageBreakBefore(row);
            }
            OrderBlock block = new OrderBlock(sheet, planned.market(), order, dates, row);
            orders.put(order, block.write(lines));
            row = block.next() + 2;
        }
        if (orders.isEmpty()) {
            sheet.hint(row, "Nothing has to be ordered.");
            OrderLines.setWidths(sheet, dates);
        }
        return new SupplierOrdersSheet(sheet.build(), orders, lines);
    }
}
