package perkilo.report.order;

import java.math.BigDecimal;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import perkilo.costing.Item;
import perkilo.model.Settings;
import perkilo.orderplan.Horizon;
import perkilo.orderplan.HorizonItem;
import perkilo.orderplan.LotUse;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.ShelfLife;
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
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;

/** One item on the sheet of stock: its lots, its stock day by day, and what that costs. */
final class StockBlock {

    private static final BigDecimal DAYS_A_YEAR = BigDecimal.valueOf(365);
    private static final int MISSING_DIGITS = 9;

    /** The name of the row whose column of quantities has the total that is missing of an item. */
    static final String MISSING = "Missing";

    private final StockColumns columns;
    private final OrderOutcome.Planned planned;
    private final Horizon horizon;
    private final StockFlow flow;
    private final HorizonItem item;
    private final NumberFormat format;
    private final NumberFormat money;
    private final NumberFormat fineMoney;
    private final StockLots lots;
    private final int firstRow;
    private final StockLine needed = new StockLine(StockDay.NEEDED.heading());
    private final StockLine used = new StockLine(StockDay.USED.heading());
    private final StockLine missing = new StockLine(MISSING);
    private final StockLine delivered = new StockLine(StockDay.DELIVERED.heading());
    private final StockLine bought = new StockLine(StockDay.BOUGHT.heading());
    private final StockLine expired = new StockLine(StockDay.EXPIRED.heading());
    private final StockLine opening = new StockLine(StockDay.OPENING.heading());
    private final StockLine closing = new StockLine(StockDay.CLOSING.heading());
    private final StockLine onShelf = new StockLine(StockDay.ON_SHELF.heading());
    private final StockLine price = new StockLine("Lowest listed price");
    private final StockLine holding = new StockLine("Holding cost: per unit and day, then until the next day");
    private final StockLine worth = new StockLine("Usable stock at the lowest listed price");
    private final StockLine credit = new StockLine("Credit for leftovers");
    private final Placed<StockLine> placed;

    /**
     * An item's block; nothing is written yet.
     *
     * @param index of the item
     * @param row the row of its name, from zero
     * @param needs the cell of each run's need
     * @param purchases the cells of each purchase
     */
    StockBlock(
            StockColumns columns,
            SheetBuilder sheet,
            OrderOutcome.Planned planned,
            int index,
            int row,
            IdentityHashMap<Item, Expr> needs,
            IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> purchases) {
        this.columns = columns;
        this.planned = planned;
        this.horizon = planned.plan().basis().horizon();
        this.flow = planned.plan().stock().get(index);
        this.item = flow.item();
        String home = planned.book().settings().home().getCurrencyCode();
        this.format = StockLots.format(flow);
        this.money = NumberFormat.money(home, 2);
        this.fineMoney = NumberFormat.money(home, 4);
        this.lots = new StockLots(columns, horizon, flow, needed, purchases);
        this.firstRow = row;
        Need need = planned.plan().basis().problem().needs().get(index);
        useUp(needs);
        goOn();
        valued(need);
        this.placed = columns.block.at(sheet, row + 1, lines());
    }

    private List<StockLine> lines() {
        List<StockLine> lines = new ArrayList<>();
        lines.add(needed);
        lines.addAll(lots.lines());
        lines.addAll(List.of(used, missing));
        if (isOnOrder()) {
            lines.add(delivered);
        }
        lines.addAll(List.of(bought, expired, opening, closing, onShelf, price, holding, worth));
        if (isCredited()) {
            lines.add(credit);
        }
        return lines;
    }

    private boolean isOnOrder() {
        return !flow.onOrder().isEmpty();
    }

    private boolean isCredited() {
        return !Inputs.isNone(planned.book().settings().leftoverCredit());
    }

    /** Writes the block. */
    void write() {
        placed.sheet()
                .section(
                        firstRow,
                        item.name() + " (" + item.item().unit() + ")",
                        item.item().origin());
        placed.write()
                .mark(
                        missing,
                        columns.quantity,
                        columns.lastDay(),
                        Mark.where(ResultSheet.Condition.ABOVE_ZERO, Look.ERROR));
    }

    /** The row after the block, from zero. */
    int next() {
        return placed.next();
    }

    /** A column's place on the sheet, from zero. */
    int column(Column<StockLine> column) {
        return placed.column(column);
    }

    /** Whether the item is a raw material. */
    boolean isMaterial() {
        return item.item().isMaterial();
    }

    /** The value of the usable stock after a day at the lowest listed price, in home currency. */
    Expr worth(int period) {
        return onDay(placed, worth, period);
    }

    /** The holding cost of all days together, in home currency. */
    Expr holding() {
        return placed.sum(placed.indexOf(holding), columns.days);
    }

    /** The credit for leftovers, in home currency. */
    Expr credit() {
        return isCredited() ? placed.ref(credit, columns.quantity) : Expr.of(0);
    }

    /** The lowest listed price, in home currency. */
    Expr price() {
        return placed.ref(price, columns.quantity);
    }

    /** The quantity left in a lot at the end. */
    Expr left(LotUse lot) {
        return lots.left(placed, lot);
    }

    /** The figure of a row for a day. */
    private interface OfDay extends BiFunction<Row<StockLine>, Integer, Expr> {}

    /** Fills the rows for what is needed, used and missing. */
    private void useUp(IdentityHashMap<Item, Expr> needs) {
        fill(needed, StockDay.NEEDED, (row, period) -> needed(needs, period));
        fill(used, StockDay.USED, (row, period) -> lots.used(row.table(), period));
        missing.put(columns.quantity, row -> row.sum(columns.days), null, format, Look.PLAIN);
        for (int each = 0; each < columns.days.size(); each++) {
            int period = each;
            missing.put(
                    columns.days.get(period), row -> missing(row.table(), period), BigDecimal.ZERO, format, Look.PLAIN);
        }
    }

    private Expr needed(IdentityHashMap<Item, Expr> needs, int period) {
        return Expr.sum(item.uses().stream()
                .filter(use -> use.quantity().signum() > 0 && horizon.periodFrom(use.day()) == period)
                .map(use -> needed(Objects.requireNonNull(needs.get(use.item())), use))
                .toList());
    }

    private static Expr needed(Expr all, HorizonItem.Use use) {
        return use.notCovered().signum() == 0 ? all : all.minus(Expr.of(use.notCovered()));
    }

    /** The need that is not covered after a change of packs; zero in the original plan. */
    private Expr missing(Placed<StockLine> block, int period) {
        return onDay(block, needed, period).minus(onDay(block, used, period)).rounded(MISSING_DIGITS);
    }

    /** Fills the rows for the stock from day to day. */
    private void goOn() {
        fill(delivered, StockDay.DELIVERED, (row, period) -> arriving(row.table(), LotUse::isOnOrder, period));
        fill(bought, StockDay.BOUGHT, (row, period) -> arriving(row.table(), LotUse::isBought, period));
        fill(expired, StockDay.EXPIRED, (row, period) -> lots.left(row.table(), lot -> lot.givenUpIn() == period));
        fill(opening, StockDay.OPENING, (row, period) -> opening(row.table(), period));
        fill(closing, StockDay.CLOSING, Look.TOTAL, (row, period) -> closing(row.table(), period));
        fill(onShelf, StockDay.ON_SHELF, (row, period) -> onShelf(row.table(), period));
    }

    private Expr arriving(Placed<StockLine> block, Predicate<LotUse> which, int period) {
        return lots.quantities(block, lot -> which.test(lot) && lot.arrival() == period);
    }

    private Expr opening(Placed<StockLine> block, int period) {
        return period == 0 ? lots.quantities(block, LotUse::isOnShelf) : onDay(block, closing, period - 1);
    }

    private Expr closing(Placed<StockLine> block, int period) {
        Expr before = onDay(block, opening, period);
        Expr in = isOnOrder() ? before.plus(onDay(block, delivered, period)) : before;
        return in.plus(onDay(block, bought, period))
                .minus(onDay(block, used, period))
                .minus(onDay(block, expired, period));
    }

    private Expr onShelf(Placed<StockLine> block, int period) {
        Expr expiredSoFar = block.sum(block.indexOf(expired), columns.days.subList(0, period + 1));
        return onDay(block, closing, period).plus(expiredSoFar);
    }

    /** Fills the rows for the cost and the value of the stock. */
    private void valued(Need need) {
        BigDecimal lowest = planned.market().lowestPrice(item.name()).orElse(BigDecimal.ZERO);
        price.put(columns.quantity, row -> lowestPrice(), lowest, fineMoney, Look.PLAIN);
        holding.put(columns.quantity, row -> holdingPerUnit(row.table()), need.holdingPerUnit(), fineMoney, Look.PLAIN);
        inMoney(holding, (row, period) -> kept(row.table(), period).times(row.ref(columns.quantity)));
        inMoney(worth, (row, period) -> onDay(row.table(), closing, period).times(price(row.table())));
        credit.put(columns.quantity, row -> credit(row.table()), null, money, Look.PLAIN);
    }

    /** Quantity times days: on the shelf until the next day, and what arrives before the day from its arrival on. */
    private Expr kept(Placed<StockLine> block, int period) {
        long length = period + 1 < horizon.periods()
                ? ChronoUnit.DAYS.between(horizon.day(period), horizon.day(period + 1))
                : 0;
        Expr kept = onDay(block, onShelf, period).times(Expr.of(length));
        for (LotUse lot : flow.lots()) {
            long early = lot.arrival() == period ? ChronoUnit.DAYS.between(lot.from(), horizon.day(period)) : 0;
            kept = early == 0 ? kept : kept.plus(lots.quantity(block, lot).times(Expr.of(early)));
        }
        return kept;
    }

    private Expr lowestPrice() {
        return planned.market().currentListings(item.name()).stream()
                .map(Landing::lowestPrice)
                .reduce(Expr::min)
                .orElse(Expr.of(0));
    }

    private Expr holdingPerUnit(Placed<StockLine> block) {
        Settings settings = planned.book().settings();
        return Expr.input(settings.holdingPerYear()).times(price(block)).over(Expr.of(DAYS_A_YEAR));
    }

    /** {@code Leftover credit % × lowest price × MIN( bought and left , what can be used in time )}. */
    private Expr credit(Placed<StockLine> block) {
        Figure rate = planned.book().settings().leftoverCredit();
        Expr left = lots.left(block, lot -> lot.isBought() && lot.outlives(horizon));
        Expr neededInAll = block.sum(block.indexOf(needed), columns.days);
        ShelfLife life = item.life();
        Expr counted = life == null
                ? left
                : left.min(neededInAll
                        .times(Expr.of(Math.max(0, life.months() - 1L)))
                        .over(Expr.of(horizon.months())));
        return Expr.input(rate).times(price(block)).times(counted);
    }

    private Expr price(Placed<StockLine> block) {
        return block.ref(price, columns.quantity);
    }

    private Expr onDay(Placed<StockLine> block, StockLine line, int period) {
        return block.ref(line, columns.days.get(period));
    }

    private void fill(StockLine line, Column<StockDay> fact, OfDay live) {
        fill(line, fact, Look.PLAIN, live);
    }

    /** Puts a figure into each day that the engine knows too. */
    private void fill(StockLine line, Column<StockDay> fact, Look look, OfDay live) {
        for (StockDay day : StockDay.of(flow, horizon.days()).rows()) {
            int period = day.period();
            line.put(columns.days.get(period), row -> live.apply(row, period), fact.valueOf(day), format, look);
        }
    }

    private void inMoney(StockLine line, OfDay live) {
        for (int each = 0; each < columns.days.size(); each++) {
            int period = each;
            line.put(columns.days.get(period), row -> live.apply(row, period), null, money, Look.PLAIN);
        }
    }
}
