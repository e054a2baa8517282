package perkilo.report.order;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import perkilo.model.StockLot;
import perkilo.orderplan.Horizon;
import perkilo.orderplan.LotUse;
import perkilo.orderplan.StockFlow;
import perkilo.orderplan.StockOnHand;
import perkilo.origin.Day;
import perkilo.origin.Origin;
import perkilo.purchasing.LineCost;
import perkilo.report.part.Inputs;
import perkilo.report.part.Landing;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;

/**
 * The lots of one item as rows of its block, and how each is used up.
 *
 * <p>A lot covers on a day {@code MIN( its remaining quantity , the need − what the lots above it cover )}: the lots
 * are in the order in which they expire.
 */
final class StockLots {

    private final StockColumns columns;
    private final Horizon horizon;
    private final StockFlow flow;
    private final StockLine needed;
    private final IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> purchases;
    private final NumberFormat format;
    private final List<StockLine> lines = new ArrayList<>();
    private final IdentityHashMap<LotUse, StockLine> lineOf = new IdentityHashMap<>();

    /**
     * A row for each lot.
     *
     * @param needed the row of what is needed each day
     * @param purchases the cells of each purchase
     */
    StockLots(
            StockColumns columns,
            Horizon horizon,
            StockFlow flow,
            StockLine needed,
            IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> purchases) {
        this.columns = columns;
        this.horizon = horizon;
        this.flow = flow;
        this.needed = needed;
        this.purchases = purchases;
        this.format = format(flow);
        for (LotUse lot : flow.lots()) {
            StockLine line = line(lot);
            lines.add(line);
            lineOf.put(lot, line);
        }
    }

    /** How quantities of an item are shown. */
    static NumberFormat format(StockFlow flow) {
        return flow.item().item().isMaterial() ? NumberFormat.QUANTITY : NumberFormat.WHOLE;
    }

    /** Until when a lot can be used, in words. */
    static String until(LotUse lot) {
        return lot.lastDay() == null ? "no end known" : lot.lastDay().toString();
    }

    /** The rows, in the order in which the lots are used up. */
    List<StockLine> lines() {
        return lines;
    }

    /** The quantity that all lots cover on a day. */
    Expr used(Placed<StockLine> block, int period) {
        if (lines.isEmpty()) {
            return Expr.of(0);
        }
        int last = block.indexOf(lines.get(lines.size() - 1));
        return block.sum(columns.days.get(period), block.indexOf(lines.get(0)), last);
    }

    /** The initial quantity of some lots. */
    Expr quantities(Placed<StockLine> block, Predicate<LotUse> which) {
        List<Expr> chosen = new ArrayList<>();
        for (LotUse lot : flow.lots()) {
            if (which.test(lot)) {
                chosen.add(block.ref(lineOf(lot), columns.quantity));
            }
        }
        return Expr.sum(chosen);
    }

    /** The initial quantity of a lot. */
    Expr quantity(Placed<StockLine> block, LotUse lot) {
        return block.ref(lineOf(lot), columns.quantity);
    }

    /** The quantity left at the end in some lots. */
    Expr left(Placed<StockLine> block, Predicate<LotUse> which) {
        List<Expr> chosen = new ArrayList<>();
        for (LotUse lot : flow.lots()) {
            if (which.test(lot)) {
                chosen.add(left(block, lot));
            }
        }
        return Expr.sum(chosen);
    }

    /** The quantity left at the end in one lot. */
    Expr left(Placed<StockLine> block, LotUse lot) {
        StockLine line = lineOf(lot);
        return lot.arrivesIn(horizon)
                ? block.ref(line, restColumn(lot))
                : rest(new Row<>(line, block.indexOf(line), block));
    }

    private StockLine lineOf(LotUse lot) {
        return Objects.requireNonNull(lineOf.get(lot));
    }

    private StockLine line(LotUse lot) {
        StockLine line = named(lot).put(columns.quantity, row -> quantity(lot), lot.quantity(), format, Look.PLAIN);
        for (int each = 0; each < columns.days.size(); each++) {
            int period = each;
            if (lot.isUsableIn(period)) {
                Column<StockLine> day = columns.days.get(period);
                line.put(day, row -> use(row, period), lot.used().get(period), format, Look.PLAIN);
            }
        }
        return lot.arrivesIn(horizon) ? line.put(restColumn(lot), this::rest, lot.left(), format, Look.PLAIN) : line;
    }

    private StockLine named(LotUse lot) {
        if (lot.source() instanceof LotUse.Held held) {
            StockLot stock = held.stock().lot();
            return new StockLine(held(stock, lot), stock.origin(), until(lot));
        }
        if (lot.source() instanceof LotUse.Bought bought) {
            return new StockLine(bought(bought, lot), Origin.NONE, until(lot));
        }
        throw new AssertionError(lot.source());
    }

    private Expr quantity(LotUse lot) {
        if (lot.source() instanceof LotUse.Held held) {
            StockLot stock = held.stock().lot();
            return Landing.times(
                    Expr.input(stock.quantity()),
                    Inputs.basePer(stock.unit(), StockOnHand.density(flow.item().item())));
        }
        if (lot.source() instanceof LotUse.Bought bought) {
            return Objects.requireNonNull(purchases.get(bought.line())).quantity();
        }
        throw new AssertionError(lot.source());
    }

    private Expr use(Row<StockLine> row, int period) {
        Column<StockLine> day = columns.days.get(period);
        Expr quantity = row.ref(columns.quantity);
        Expr before = period == 0 ? quantity : quantity.minus(row.sum(columns.days.subList(0, period)));
        Expr wanted = row.table().ref(needed, day);
        int first = row.table().indexOf(lines.get(0));
        return before.min(
                row.index() == first ? wanted : wanted.minus(row.table().sum(day, first, row.index() - 1)));
    }

    private Expr rest(Row<StockLine> row) {
        return row.ref(columns.quantity).minus(row.sum(columns.days));
    }

    private Column<StockLine> restColumn(LotUse lot) {
        return lot.outlives(horizon) ? columns.left : columns.expired;
    }

    private String held(StockLot stock, LotUse lot) {
        Day expected = stock.expected();
        if (expected == null) {
            return "On the shelf";
        }
        if (horizon.isOverdue(expected.date())) {
            return "On order, overdue since " + expected + ", counted from " + horizon.today() + " on";
        }
        String expectedOn = "On order, expected on " + expected;
        return lot.arrivesIn(horizon) ? expectedOn : expectedOn + ", after these days";
    }

    private String bought(LotUse.Bought bought, LotUse lot) {
        return bought.listing().supplier().name() + ", "
                + bought.listing().offer().pack() + ", arrives on " + lot.from();
    }
}
