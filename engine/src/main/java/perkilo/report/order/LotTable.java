package perkilo.report.order;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import perkilo.costing.Item;
import perkilo.model.StockLot;
import perkilo.orderplan.Horizon;
import perkilo.orderplan.LotUse;
import perkilo.orderplan.StockFlow;
import perkilo.orderplan.StockOnHand;
import perkilo.origin.Day;
import perkilo.purchasing.LineCost;
import perkilo.report.part.Inputs;
import perkilo.report.part.Landing;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;

/**
 * The lots of one item, and how each is used up.
 *
 * <p>A lot gives in a month {@code MIN( what is left of it , what is needed − what the lots above it give )}: the lots
 * stand in the order in which they expire.
 */
final class LotTable {

    private static final int QUANTITY = 1;
    private static final int UNTIL = 2;

    private final MonthRows months;
    private final SheetBuilder sheet;
    private final Horizon horizon;
    private final StockFlow flow;
    private final NumberFormat format;
    private final List<Expr> needed;
    private final IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> lines;
    private final List<Expr> quantities = new ArrayList<>();
    private final List<Expr> left = new ArrayList<>();
    private final int first;

    /**
     * A table of lots.
     *
     * @param needed per month
     * @param lines the cells of what is bought
     * @param row the first lot's, from zero
     */
    LotTable(
            MonthRows months,
            Horizon horizon,
            StockFlow flow,
            List<Expr> needed,
            IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> lines,
            int row) {
        this.months = months;
        this.sheet = months.sheet();
        this.horizon = horizon;
        this.flow = flow;
        this.format = format(flow.item().item());
        this.needed = needed;
        this.lines = lines;
        this.first = row;
    }

    /** How quantities of an item are shown. */
    static NumberFormat format(Item item) {
        return item.isMaterial() ? NumberFormat.QUANTITY : NumberFormat.WHOLE;
    }

    /** Writes a row for each lot, and returns the row after them. */
    int write() {
        for (int lot = 0; lot < flow.lots().size(); lot++) {
            write(flow.lots().get(lot), first + lot);
        }
        return first + flow.lots().size();
    }

    /** What all lots give in a month. */
    Expr used(int period) {
        return flow.lots().isEmpty()
                ? Expr.of(0)
                : sheet.sumOfColumn(
                        months.column(period), first, first + flow.lots().size() - 1);
    }

    /** What there is at first of some lots. */
    Expr quantities(Predicate<LotUse> which) {
        return sum(quantities, which);
    }

    /** What is left at the end of some lots. */
    Expr left(Predicate<LotUse> which) {
        return sum(left, which);
    }

    /** What is left at the end of one lot. */
    Expr left(int lot) {
        return left.get(lot);
    }

    private void write(LotUse lot, int row) {
        Expr quantity = sheet.checked(row, QUANTITY, quantity(lot, row), lot.quantity(), format, Look.PLAIN);
        sheet.text(
                row,
                UNTIL,
                lot.lastDay() == null ? "no end known" : lot.lastDay().toString(),
                Look.PLAIN);
        List<Expr> used = new ArrayList<>();
        for (int period = 0; period < months.count(); period++) {
            used.add(lot.isUsableIn(period) ? use(lot, row, period, quantity, used) : Expr.of(0));
        }
        Expr rest = quantity.minus(months.sum(row, used, months.count()));
        left.add(lot.arrivesIn(horizon) ? rest(lot, row, rest) : rest);
        quantities.add(quantity);
    }

    private Expr rest(LotUse lot, int row, Expr rest) {
        int column = months.column(months.count()) + (lot.outlives(horizon) ? 0 : 1);
        return sheet.checked(row, column, rest, lot.left(), format, Look.PLAIN);
    }

    private Expr use(LotUse lot, int row, int period, Expr quantity, List<Expr> usedBefore) {
        int column = months.column(period);
        Expr before = period == 0 ? quantity : quantity.minus(months.sum(row, usedBefore, period));
        Expr wanted =
                row == first ? needed.get(period) : needed.get(period).minus(sheet.sumOfColumn(column, first, row - 1));
        return sheet.checked(row, column, before.min(wanted), lot.used().get(period), format, Look.PLAIN);
    }

    private Expr quantity(LotUse lot, int row) {
        if (lot.source() instanceof LotUse.Held held) {
            StockLot stock = held.stock().lot();
            sheet.text(row, 0, held(stock, lot), Look.LABEL, stock.origin());
            return Landing.times(
                    Expr.input(stock.quantity()),
                    Inputs.basePer(stock.unit(), StockOnHand.density(flow.item().item())));
        }
        if (lot.source() instanceof LotUse.Bought bought) {
            sheet.text(row, 0, bought(lot, bought), Look.LABEL);
            return Objects.requireNonNull(lines.get(bought.line())).quantity();
        }
        throw new AssertionError(lot.source());
    }

    private String held(StockLot stock, LotUse lot) {
        Day expected = stock.expected();
        if (expected == null) {
            return "On the shelf";
        }
        if (horizon.isOverdue(expected.date())) {
            return "On order, overdue since %s, counted from %s on".formatted(expected, month(0));
        }
        return lot.arrivesIn(horizon)
                ? "On order, expected on %s, here for %s".formatted(expected, month(lot.arrival()))
                : "On order, expected on %s, after these months".formatted(expected);
    }

    private YearMonth month(int period) {
        return horizon.months().get(period);
    }

    private String bought(LotUse lot, LotUse.Bought bought) {
        return "%s, %s, here by %s"
                .formatted(
                        bought.listing().supplier().name(),
                        bought.listing().offer().pack(),
                        horizon.firstDay(lot.arrival()));
    }

    private Expr sum(List<Expr> cells, Predicate<LotUse> which) {
        List<Expr> chosen = new ArrayList<>();
        for (int lot = 0; lot < cells.size(); lot++) {
            if (which.test(flow.lots().get(lot))) {
                chosen.add(cells.get(lot));
            }
        }
        return Expr.sum(chosen);
    }
}
