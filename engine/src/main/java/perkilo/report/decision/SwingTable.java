package perkilo.report.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Head;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.decision.Factor;
import perkilo.decision.Swing;
import perkilo.origin.Decimals;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** What each factor does to the cost of one run. */
public final class SwingTable {

    private static final String NOT_COVERED = "not covered";
    private static final int WIDTH = 15;

    private final RunCost cost;
    private final @Nullable RunFigures figures;
    private final @Nullable Expr move;
    private final NumberFormat money;

    final Column<Swing> factor = Column.<Swing>of("factor", "What is moved")
            .words(SwingTable::label)
            .look(Look.LABEL)
            .width(36)
            .json(swing -> swing.factor().name());

    private final Column<Swing> kind = Column.<Swing>of("kind", "")
            .json(swing -> swing.factor().kind().name().toLowerCase(Locale.ROOT).replace('_', ' '))
            .notOnSheet();

    private final Column<Swing> moving;
    private final Column<Swing> down;
    private final Column<Swing> up;

    /** The change with the factor moved down. */
    final Column<Swing> changeDown;

    /** The change with the factor moved up. */
    final Column<Swing> changeUp;

    private final Column<Swing> downReplanned;
    private final Column<Swing> upReplanned;

    /** The columns for JSON only, without cells. */
    public SwingTable(RunCost cost) {
        this(cost, null, null);
    }

    /**
     * The columns on a sheet.
     *
     * @param move the cell of how far each factor is moved
     */
    SwingTable(RunFigures figures, Expr move) {
        this(figures.cost(), figures, move);
    }

    private SwingTable(RunCost cost, @Nullable RunFigures figures, @Nullable Expr move) {
        this.cost = cost;
        this.figures = figures;
        this.move = move;
        this.money = NumberFormat.money(cost.home().getCurrencyCode(), 4);
        moving = Column.<Swing>of("moving", "Cost that moves with it")
                .value(Swing::moving)
                .formula(this::moving)
                .format(money)
                .width(WIDTH);
        down = kept("down", "Cost if moved down", Swing::down, false);
        up = kept("up", "Cost if moved up", Swing::up, true);
        changeDown = change("changeDown", "Change if moved down", down);
        changeUp = change("changeUp", "Change if moved up", up);
        downReplanned = replanned("downReplanned", "Down, planned anew", Swing::downReplanned);
        upReplanned = replanned("upReplanned", "Up, planned anew", Swing::upReplanned);
    }

    /**
     * The table as the sheet shows it.
     *
     * @param withReplanned whether purchases were planned anew
     */
    Table<Swing> onSheet(boolean withReplanned) {
        List<Column<Swing>> columns = new ArrayList<>(List.of(factor, moving, down, up, changeDown, changeUp));
        if (withReplanned) {
            columns.addAll(List.of(downReplanned, upReplanned));
        }
        return new Table<>(columns);
    }

    /** The swings as JSON shows them. */
    public Table.Filled<Swing> inJson(List<Swing> swings) {
        RunKeys<Swing> keys = new RunKeys<>(cost);
        return Table.of(
                        keys.product,
                        keys.formula,
                        keys.units,
                        keys.batchKg,
                        factor,
                        kind,
                        down,
                        up,
                        downReplanned,
                        upReplanned)
                .with(swings);
    }

    /** A cost with the purchase kept: a formula where the factor moves it in proportion, otherwise a value. */
    private Column<Swing> kept(
            String key, String heading, Function<Swing, @Nullable BigDecimal> value, boolean upwards) {
        return Column.<Swing>of(key, heading)
                .value(value)
                .formula(row -> {
                    BigDecimal engine = value.apply(row.entry());
                    if (engine == null) {
                        return null;
                    }
                    if (figures == null || move == null || row.entry().moving() == null) {
                        return Expr.of(engine);
                    }
                    Swing.Past past = row.entry().past();
                    if (past != null) {
                        BigDecimal change =
                                upwards ? past.spread().high() : past.spread().low();
                        return figures.ofOne().plus(row.ref(moving).times(Expr.of(change)));
                    }
                    Expr by = row.ref(moving).times(move);
                    return upwards ? figures.ofOne().plus(by) : figures.ofOne().minus(by);
                })
                .words(swing -> value.apply(swing) == null ? NOT_COVERED : null)
                .wordsLook(Look.HINT)
                .format(money)
                .width(WIDTH)
                .json(swing -> value.apply(swing));
    }

    private static String label(Swing swing) {
        Swing.Past past = swing.past();
        String name = swing.factor().name();
        return past == null
                ? name
                : name + " (past " + past.days() + " days: "
                        + signed(past.spread().low()) + " to "
                        + signed(past.spread().high()) + " %)";
    }

    private static String signed(BigDecimal fraction) {
        BigDecimal percent = fraction.movePointRight(2);
        return (percent.signum() < 0 ? "\u2212" : "+") + Decimals.amount(percent.abs(), 1);
    }

    private Column<Swing> change(String key, String heading, Column<Swing> of) {
        return Column.<Swing>of(key, heading)
                .formula(row -> figures == null || !row.has(of) ? null : change(row, of, figures.ofOne()))
                .format(money)
                .width(WIDTH);
    }

    /** The difference of two formulas or, where the cost is a value of the last run, of two values. */
    private static Expr change(Row<Swing> row, Column<Swing> of, Expr ofOne) {
        Expr change = row.ref(of).minus(ofOne);
        return row.entry().moving() == null ? Expr.of(change.value()) : change;
    }

    private Column<Swing> replanned(String key, String heading, Function<Swing, @Nullable BigDecimal> value) {
        return Column.<Swing>of(key, heading)
                .value(value)
                .words(swing -> value.apply(swing) != null ? null : swing.past() == null ? "not possible" : "")
                .wordsLook(Look.HINT)
                .format(money)
                .width(WIDTH)
                .json(swing -> value.apply(swing));
    }

    private @Nullable Expr moving(Row<Swing> row) {
        Swing swing = row.entry();
        RunFigures cells = figures;
        if (cells == null || swing.moving() == null) {
            return null;
        }
        Factor what = swing.factor();
        Expr whole = switch (what.kind()) {
            case ITEM -> cells.withPrice(item(what.name()));
            case CURRENCY -> sum(item -> cells.withCurrency(item, what.name()));
            case LABOUR_RATE ->
                cells.head(Head.MAKING).plus(cells.head(Head.FILLING)).plus(cells.head(Head.OVERHEAD));
            case FILL, FILL_LOSS, HANDLING_LOSSES, COMPONENT_LOSSES, RUN_SIZE ->
                throw new IllegalStateException(what + " does not move in proportion");
        };
        return whole.over(cells.measure());
    }

    private Expr sum(Function<ItemCost, Expr> part) {
        return Expr.sum(cost.items().stream()
                .map(part)
                .filter(expr -> expr.isLive() || expr.value().signum() != 0)
                .toList());
    }

    private ItemCost item(String name) {
        return cost.items().stream()
                .filter(item -> item.item().name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
