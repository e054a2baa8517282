package perkilo.report.send;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import perkilo.model.Buyer;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.OrderPlan;
import perkilo.purchasing.LineCost;
import perkilo.sheet.Expr;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** The purchase orders of a plan: all on one sheet, or each as a workbook of its own. */
public final class PurchaseOrders {

    /** The sheet with all orders of a plan. */
    public static final String ALL = "Orders to send";

    /** The sheet of a workbook with one order. */
    public static final String ONE = "Purchase order";

    private static final String ENDING = ".xlsx";
    private static final int LONGEST_NAME = 60;

    /** What file systems do not take in a name, or what their users' tools trip over. */
    private static final Pattern UNSAFE = Pattern.compile("[\\p{Cntrl}<>:\"/\\\\|?*%#&;$!`'{}\\[\\]]+");

    private static final Pattern ORDER_FILE = Pattern.compile("\\d{8}-[A-Z0-9]{1,6}-\\d+( .*)?\\.xlsx");

    private PurchaseOrders() {}

    /**
     * A workbook for one order.
     *
     * @param order the order
     * @param fileName safe on every system, different for each order of a plan: the number, then the supplier's name
     * @param report its only sheet
     */
    public record OrderFile(OrderToSend order, String fileName, Report report) {}

    /** A workbook for each order, by day. */
    public static List<OrderFile> files(OrderOutcome.Planned planned) {
        Buyer buyer = planned.book().settings().buyer();
        return OrderToSend.of(planned.plan()).stream()
                .map(order -> new OrderFile(order, fileName(order), new Report(List.of(page(buyer, order)))))
                .toList();
    }

    /** Whether a file has a name that an order's workbook could have. */
    public static boolean isOrderFile(String fileName) {
        return ORDER_FILE.matcher(fileName).matches();
    }

    /**
     * All orders on one sheet, each on a page of its own, by day.
     *
     * @param packs the cell with the packs of a line
     * @param price the cell with the price of one pack of a line
     */
    public static ResultSheet all(
            OrderPlan plan, Buyer buyer, Function<LineCost, Expr> packs, Function<LineCost, Expr> price) {
        SheetBuilder sheet = new SheetBuilder(ALL).unnumbered();
        PurchaseOrderPage.Figures figures =
                new PurchaseOrderPage.Figures(line -> packs.apply(line.cost()), line -> price.apply(line.cost()));
        List<OrderToSend> orders = OrderToSend.of(plan);
        int row = 0;
        for (OrderToSend order : orders) {
            if (row > 0) {
                sheet.pageBreakBefore(row);
            }
            row = new PurchaseOrderPage(sheet, buyer, order, figures, row).write() + 1;
        }
        if (orders.isEmpty()) {
            sheet.title(0, ALL);
            sheet.hint(1, "Nothing has to be ordered.");
        }
        return sheet.build();
    }

    private static ResultSheet page(Buyer buyer, OrderToSend order) {
        SheetBuilder sheet = new SheetBuilder(ONE);
        PurchaseOrderPage page = new PurchaseOrderPage(sheet, buyer, order, PurchaseOrderPage.Figures.FIXED, 0);
        page.write();
        return sheet.repeat(page.headRow()).build();
    }

    private static String fileName(OrderToSend order) {
        String safe = UNSAFE.matcher(order.supplier().name()).replaceAll(" ").strip();
        StringBuilder name = new StringBuilder();
        safe.codePoints().limit(LONGEST_NAME).forEach(name::appendCodePoint);
        String words = String.join(" ", List.of(name.toString().strip().split("\\s+")));
        while (words.endsWith(".")) {
            words = words.substring(0, words.length() - 1).strip();
        }
        return order.number() + (words.isEmpty() ? "" : " " + words) + ENDING;
    }
}
