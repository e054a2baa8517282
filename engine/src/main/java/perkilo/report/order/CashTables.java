package perkilo.report.order;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.Payment;
import perkilo.orderplan.SupplierOrder;
import perkilo.report.part.QuoteDates;
import perkilo.report.send.OrderToSend;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/** What is paid in each month, by day of order and by day of payment, and each payment. */
final class CashTables {

    private static final String KNOWN =
            "Prepaid % of goods and charges is paid on the day of the order, the rest Payment terms days after the goods"
                    + " arrive, and duty on arrival; without either, everything on the day of the order.";
    private static final String UNKNOWN =
            "No supplier states Prepaid % or Payment terms days, so everything counts on the day of the order.";

    private final SheetBuilder sheet;
    private final OrderPlan plan;
    private final String home;
    private final NumberFormat money;
    private final IdentityHashMap<SupplierOrder, SupplierOrdersSheet.OrderCells> cells;

    /** A payment for an order. */
    private record Paid(OrderToSend order, Payment payment) {}

    /**
     * A month.
     *
     * @param ordered the orders placed in it
     * @param paid the payments made in it
     */
    private record Month(YearMonth month, List<SupplierOrder> ordered, List<Paid> paid) {

        BigDecimal landed() {
            return ordered.stream().map(SupplierOrder::landed).reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        BigDecimal payments() {
            return paid.stream().map(one -> one.payment().home()).reduce(BigDecimal.ZERO, BigDecimal::add);
        }
    }

    /**
     * The tables of a plan; nothing is written yet.
     *
     * @param home code of the home currency
     * @param cells of each order
     */
    CashTables(
            SheetBuilder sheet,
            OrderPlan plan,
            String home,
            IdentityHashMap<SupplierOrder, SupplierOrdersSheet.OrderCells> cells) {
        this.sheet = sheet;
        this.plan = plan;
        this.home = home;
        this.money = NumberFormat.money(home, 2);
        this.cells = cells;
    }

    /** Writes the tables, unless nothing is ordered; the row after them, from zero. */
    int write(int row) {
        if (plan.orders().isEmpty()) {
            return row;
        }
        List<Paid> paid = new ArrayList<>();
        for (OrderToSend order : OrderToSend.of(plan)) {
            Payment.of(order.order(), order.arrivesOn()).forEach(payment -> paid.add(new Paid(order, payment)));
        }
        paid.sort(Comparator.comparing(one -> one.payment().day()));
        boolean known = plan.orders().stream()
                .anyMatch(order -> order.supplier().payment().isKnown());
        List<Month> months = months(paid);
        Column<Paid> amount = Column.<Paid>of("home", "Amount, " + home)
                .value(one -> one.payment().home())
                .formula(one -> amount(one.entry()))
                .format(money)
                .width(17)
                .sum(plan.outlay());
        int next = row;
        sheet.section(next, "Cash by month");
        sheet.hint(next + 1, known ? KNOWN : UNKNOWN);
        int head = next + 2;
        Placed<Paid> payments = payments(amount).at(sheet, head + months.size() + 5, paid);
        Column<Month> ordered = Column.<Month>of("ordered", "By day of order, " + home)
                .value(Month::landed)
                .formula(month -> Expr.sum(month.entry().ordered().stream()
                        .map(order -> cells(order).landed())
                        .toList()))
                .format(money)
                .sum(plan.outlay());
        Column<Month> byPayment = Column.<Month>of("paid", "By day of payment, " + home)
                .value(Month::payments)
                .formula(month -> Expr.sum(month.entry().paid().stream()
                        .map(one -> known ? payments.ref(one, amount) : amount(one))
                        .toList()))
                .format(money)
                .sum(plan.outlay())
                .totalLook(Look.KEY);
        next = Table.of(
                        Column.<Month>of("month", "Month")
                                .formula(month -> Expr.day(month.entry().month().atDay(1)))
                                .format(NumberFormat.MONTH)
                                .look(Look.LABEL)
                                .totalWords("All orders"),
                        ordered,
                        byPayment)
                .at(sheet, head, months)
                .write()
                .next();
        if (!known) {
            return next + 1;
        }
        sheet.section(head + months.size() + 4, "Payments by day");
        return payments.write().next() + 1;
    }

    private Table<Paid> payments(Column<Paid> amount) {
        return Table.of(
                Column.<Paid>of("supplier", "Supplier")
                        .words(one -> one.order().supplier().name())
                        .look(Look.LABEL)
                        .link(one -> cells(one.order().order()).title())
                        .totalWords("All payments"),
                QuoteDates.<Paid>dates("day", "Paid on", one -> one.payment().day()),
                amount,
                Column.<Paid>of("what", "For").words(one -> one.payment().kind().words()),
                Column.<Paid>of("order", "Order").words(one -> one.order().number()));
    }

    private List<Month> months(List<Paid> paid) {
        SortedMap<YearMonth, Month> months = new TreeMap<>();
        for (SupplierOrder order : plan.orders()) {
            at(months, order.orderBy()).ordered().add(order);
        }
        for (Paid one : paid) {
            at(months, one.payment().day()).paid().add(one);
        }
        for (YearMonth month = months.firstKey(); month.isBefore(months.lastKey()); month = month.plusMonths(1)) {
            at(months, month.atDay(1));
        }
        return List.copyOf(months.values());
    }

    private static Month at(SortedMap<YearMonth, Month> months, LocalDate day) {
        return months.computeIfAbsent(
                YearMonth.from(day), month -> new Month(month, new ArrayList<>(), new ArrayList<>()));
    }

    private SupplierOrdersSheet.OrderCells cells(SupplierOrder order) {
        return Objects.requireNonNull(cells.get(order));
    }

    private Expr amount(Paid one) {
        SupplierOrdersSheet.OrderCells order = cells(one.order().order());
        Expr part = Expr.of(one.payment().part());
        return switch (one.payment().kind()) {
            case ALL -> order.landed();
            case DUTY -> order.dutyHome();
            case PREPAID, REST -> order.landed().minus(order.dutyHome()).times(part);
        };
    }
}
