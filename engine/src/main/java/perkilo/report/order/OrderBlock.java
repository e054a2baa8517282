package perkilo.report.order;

import java.util.IdentityHashMap;
import perkilo.costing.Market;
import perkilo.model.DeliveryTerm;
import perkilo.model.Supplier;
import perkilo.orderplan.HorizonProblem;
import perkilo.orderplan.SupplierOrder;
import perkilo.purchasing.LineCost;
import perkilo.report.part.Landing;
import perkilo.report.part.PurchaseLine;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;
import perkilo.sheet.table.Placed;

/** One order on the sheet of supplier orders: its lines, its charges and its landed cost. */
final class OrderBlock {

    private final SheetBuilder sheet;
    private final SupplierOrder order;
    private final int titleRow;
    private final int dayRow;
    private final OrderLines columns;
    private final Placed<PurchaseLine> lines;
    private final OrderSums sums;

    /**
     * An order's block; nothing is written yet.
     *
     * @param dates what the dates of quotes are compared with
     * @param row the first, from zero
     */
    OrderBlock(SheetBuilder sheet, Market market, SupplierOrder order, QuoteDates dates, int row) {
        this.sheet = sheet;
        this.order = order;
        this.titleRow = row;
        this.dayRow = titleRow + 1;
        String home = market.book().settings().home().getCurrencyCode();
        this.columns = new OrderLines(home, dates.seenOn(this::dayCell), line -> orderCells());
        this.lines = columns.onSheet().at(sheet, dayRow + 1, OrderLines.of(market, order));
        this.sums = new OrderSums(lines, columns.landed, order, new Landing(market, order.supplier()), home);
    }

    /** The row after the block, from zero. */
    int next() {
        return sums.next();
    }

    /** Writes the block, and puts the cells of its lines into {@code cells}. */
    SupplierOrdersSheet.OrderCells write(IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> cells) {
        Supplier supplier = order.supplier();
        sheet.section(
                titleRow,
                supplier.name() + ": order by " + order.orderBy() + ", arrives on " + order.arrivesOn(),
                supplier.origin());
        sheet.hint(dayRow, terms(supplier));
        sheet.text(dayRow, lines.column(columns.quotedOn), "order day", Look.HINT);
        sheet.value(dayRow, lines.column(columns.validUntil), Expr.day(order.orderBy()), NumberFormat.DATE, Look.PLAIN);
        lines.write();
        sums.write();
        for (PurchaseLine line : lines.rows()) {
            cells.put(
                    line.cost(),
                    new SupplierOrdersSheet.LineCells(
                            lines.ref(line, columns.landed.packs),
                            lines.ref(line, columns.landed.quantity),
                            lines.ref(line, columns.landed.price),
                            lines.ref(line, columns.landed.landed)));
        }
        return new SupplierOrdersSheet.OrderCells(
                sums.goods(), sums.landed(), sums.dutyHome(), sheet.inFirstColumn(titleRow));
    }

    private static String terms(Supplier supplier) {
        DeliveryTerm terms = supplier.terms();
        return "In " + supplier.currency().getCurrencyCode()
                + (terms == null ? "" : ", delivery term " + terms.name())
                + (supplier.leadTimeDays() == null
                        ? "; lead time unknown, so delivery is assumed on the day of the order."
                        : "; " + HorizonProblem.leadDays(supplier) + " days from order to arrival.");
    }

    /** The cell with the day of the order. */
    private String dayCell() {
        return SheetNames.absolute(dayRow, lines.column(columns.validUntil));
    }

    private Landing.OrderCells orderCells() {
        return sums.shared();
    }
}
