package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import perkilo.costing.Item;
import perkilo.model.Settings;
import perkilo.orderplan.HorizonItem;
import perkilo.orderplan.LotUse;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.StockFlow;
import perkilo.origin.Figure;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.Need;
import perkilo.report.part.Inputs;
import perkilo.report.part.Landing;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** One item on the sheet of stock: its lots, its stock month by month, and what that costs. */
final class StockBlock {

    private static final BigDecimal MONTHS_A_YEAR = BigDecimal.valueOf(12);
    private static final int MISSING_DIGITS = 9;

    /** The name of the row that holds, in the column of quantities, all that is missing of an item. */
    static final String MISSING = "Missing";

    static final int MISSING_COLUMN = 1;

    private final MonthRows months;
    private final SheetBuilder sheet;
    private final OrderOutcome.Planned planned;
    private final StockFlow flow;
    private final HorizonItem item;
    private final Need need;
    private final NumberFormat format;
    private final NumberFormat money;
    private int next;

    /**
     * The cells of an item that other parts refer to.
     *
     * @param value per month what its usable stock is worth at the lowest listed price, in home currency
     * @param holding all months, in home currency
     * @param credit for leftovers, in home currency
     * @param left what is left of each lot at the end, as many as lots
     * @param price lowest listed, in home currency
     */
    record Cells(List<Expr> value, Expr holding, Expr credit, List<Expr> left, Expr price) {}

    StockBlock(MonthRows months, OrderOutcome.Planned planned, int index, int row) {
        this.months = months;
        this.sheet = months.sheet();
        this.planned = planned;
        this.flow = planned.plan().stock().get(index);
        this.item = flow.item();
        this.need = planned.plan().basis().problem().needs().get(index);
        this.format = LotTable.format(item.item());
        this.money = NumberFormat.money(planned.book().settings().home().getCurrencyCode(), 2);
        this.next = row;
    }

    /** The row after the block, from zero. */
    int next() {
        return next;
    }

    /**
     * Writes the block.
     *
     * @param needs the cell of each run's need
     * @param lines the cells of each purchase
     */
    Cells write(IdentityHashMap<Item, Expr> needs, IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> lines) {
        heads();
        int neededRow = next++;
        List<Expr> needed = months.checked(
                neededRow,
                "Needed",
                period -> needed(needs, period),
                period -> item.needed().get(period),
                format);
        LotTable lots = new LotTable(months, planned.plan().basis().horizon(), flow, needed, lines, next);
        next = lots.write();
        List<Expr> used = months.checked(
                next++, "Used", lots::used, period -> month(period).used(), format);
        missing(needed, used);
        List<Expr> closing = new ArrayList<>();
        List<Expr> shelf = stock(lots, used, closing);
        Expr price = price();
        Expr holding = holding(shelf, price);
        int row = next++;
        List<Expr> value = months.write(
                row,
                "Usable stock at the lowest listed price",
                period -> closing.get(period).times(price),
                money,
                Look.PLAIN);
        Expr credit = credit(lots, price, months.sum(neededRow, needed, months.count()));
        List<Expr> left = new ArrayList<>();
        for (int lot = 0; lot < flow.lots().size(); lot++) {
            left.add(lots.left(lot));
        }
        return new Cells(value, holding, credit, left, price);
    }

    private void heads() {
        String name = "%s (%s)".formatted(item.name(), item.item().unit());
        sheet.text(next++, 0, name, Look.SECTION, item.item().origin());
        sheet.text(next, 0, "Lot by lot, then month by month", Look.HEADER);
        sheet.text(next, 1, "Quantity", Look.HEADER);
        sheet.text(next, 2, "Usable until", Look.HEADER);
        months.heads(next);
        sheet.text(next, months.column(months.count()), "Left at the end", Look.HEADER);
        sheet.text(next, months.column(months.count() + 1), "Expired", Look.HEADER);
        next++;
    }

    private Expr needed(IdentityHashMap<Item, Expr> needs, int period) {
        return Expr.sum(item.uses().stream()
                .filter(use -> use.run().period() == period)
                .map(use -> Objects.requireNonNull(needs.get(use.item())))
                .toList());
    }

    private StockFlow.Month month(int period) {
        return flow.months().get(period);
    }

    /** What a change of the packs leaves uncovered; nothing in the plan as it stands. */
    private void missing(List<Expr> needed, List<Expr> used) {
        int row = next++;
        List<Expr> missing = months.checked(
                row,
                MISSING,
                period -> needed.get(period).minus(used.get(period)).rounded(MISSING_DIGITS),
                period -> BigDecimal.ZERO,
                format);
        sheet.value(row, MISSING_COLUMN, months.sum(row, missing, months.count()), format, Look.PLAIN);
        sheet.highlight(
                row,
                MISSING_COLUMN,
                row,
                months.column(months.count() - 1),
                ResultSheet.Condition.ABOVE_ZERO,
                Look.ERROR);
    }

    /** Writes how the stock goes on, adds what can be used to {@code closing}, and returns all that is on the shelf. */
    private List<Expr> stock(LotTable lots, List<Expr> used, List<Expr> closing) {
        List<Expr> delivered = delivered(lots);
        List<Expr> bought = months.checked(
                next++,
                "Bought",
                period -> lots.quantities(lot -> lot.isBought() && lot.arrival() == period),
                period -> month(period).bought(),
                format);
        int expiredRow = next++;
        List<Expr> expired = months.checked(
                expiredRow,
                "Expired",
                period -> lots.left(lot -> lot.givenUpIn() == period),
                period -> month(period).expired(),
                format);
        Expr atFirst = lots.quantities(LotUse::isOnShelf);
        int openingRow = next++;
        int closingRow = next++;
        sheet.text(openingRow, 0, "Opening", Look.LABEL);
        sheet.text(closingRow, 0, "Closing: can still be used", Look.LABEL);
        for (int period = 0; period < months.count(); period++) {
            Expr before = period == 0 ? atFirst : closing.get(period - 1);
            int column = months.column(period);
            Expr opening =
                    sheet.checked(openingRow, column, before, month(period).opening(), format, Look.PLAIN);
            Expr in = delivered.isEmpty() ? opening : opening.plus(delivered.get(period));
            Expr end = in.plus(bought.get(period)).minus(used.get(period)).minus(expired.get(period));
            closing.add(sheet.checked(closingRow, column, end, month(period).closing(), format, Look.TOTAL));
        }
        return months.checked(
                next++,
                "On the shelf with what has expired",
                period -> closing.get(period).plus(months.sum(expiredRow, expired, period + 1)),
                period -> month(period).onShelf(),
                format);
    }

    /** What arrives of goods that are on order already; nothing where there are none. */
    private List<Expr> delivered(LotTable lots) {
        return flow.onOrder().isEmpty()
                ? List.of()
                : months.checked(
                        next++,
                        "Arriving of what is on order",
                        period -> lots.quantities(lot -> lot.isOnOrder() && lot.arrival() == period),
                        period -> month(period).delivered(),
                        format);
    }

    private Expr price() {
        sheet.text(next, 0, "Lowest listed price", Look.LABEL);
        Expr lowest = planned.market().currentListings(item.name()).stream()
                .map(Landing::lowestPrice)
                .reduce(Expr::min)
                .orElse(Expr.of(0));
        return sheet.checked(
                next++,
                1,
                lowest,
                planned.market().lowestPrice(item.name()).orElse(BigDecimal.ZERO),
                fine(),
                Look.PLAIN);
    }

    private Expr holding(List<Expr> shelf, Expr price) {
        Settings settings = planned.book().settings();
        int row = next++;
        Expr perUnit = sheet.checked(
                row,
                1,
                Expr.input(settings.holdingPerYear()).times(price).over(Expr.of(MONTHS_A_YEAR)),
                need.holdingPerUnit(),
                fine(),
                Look.PLAIN);
        List<Expr> cells = months.write(
                row,
                "Holding: for a unit and month, then month by month",
                period -> shelf.get(period).times(perUnit),
                money,
                Look.PLAIN);
        return months.sum(row, cells, months.count());
    }

    /** {@code Leftover credit % × lowest price × MIN( bought and left , what can be used in time )}. */
    private Expr credit(LotTable lots, Expr price, Expr needed) {
        Figure credit = planned.book().settings().leftoverCredit();
        if (Inputs.isNone(credit)) {
            return Expr.of(0);
        }
        Expr left = lots.left(
                lot -> lot.isBought() && lot.outlives(planned.plan().basis().horizon()));
        Expr counted = item.usablePeriods() == Need.UNLIMITED
                ? left
                : left.min(needed.times(Expr.of(item.usablePeriods() - 1L)).over(Expr.of(months.count())));
        sheet.text(next, 0, "Credit for what is left", Look.LABEL);
        return sheet.value(next++, 1, Expr.input(credit).times(price).times(counted), money, Look.PLAIN);
    }

    private NumberFormat fine() {
        return NumberFormat.money(planned.book().settings().home().getCurrencyCode(), 4);
    }
}
