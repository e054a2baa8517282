package perkilo.report.prices;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.costing.RunCost;
import perkilo.origin.Decimals;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/** The effect of changed prices on each run; its columns are above those of the table of prices. */
public final class EffectTable {

    private static final String NONE = "–";

    private final List<CostEffect.OfRun> rows;

    final Column<CostEffect.OfRun> run = Column.<CostEffect.OfRun>of("run", "Run")
            .words(EffectTable::title)
            .look(Look.LABEL)
            .width(30)
            .json()
            .terminal(EffectTable::title);

    private final Column<CostEffect.OfRun> per = Column.<CostEffect.OfRun>of("per", "Per")
            .words(run -> run.now().unitCost().isPresent() ? "unit" : "kg")
            .width(9);

    private final Column<CostEffect.OfRun> before = amount("costBefore", "Cost before", EffectTable::before)
            .words(run -> run.before() == null ? "not known" : null)
            .wordsLook(Look.HINT)
            .width(17)
            .terminal(run -> unsigned(before(run)));

    private final Column<CostEffect.OfRun> now = amount("costNow", "Cost now", run -> cost(run.now()))
            .look(Look.KEY)
            .width(17)
            .terminal(run -> unsigned(cost(run.now())));

    private final Column<CostEffect.OfRun> change = amount("change", "Change", EffectTable::change)
            .formula(row -> row.has(before) ? row.ref(now).minus(row.ref(before)) : null)
            .width(15)
            .terminal(run -> signed(change(run)));

    final Column<CostEffect.OfRun> fraction = Column.<CostEffect.OfRun>of("changePercent", "Change %")
            .value(EffectTable::fraction)
            .formula(row ->
                    fraction(row.entry()) == null ? null : row.ref(change).over(row.ref(before)))
            .format(NumberFormat.PERCENT)
            .width(11)
            .terminal(run -> {
                BigDecimal part = fraction(run);
                return part == null ? NONE : PriceTable.percent(part);
            });

    private final Table<CostEffect.OfRun> table = Table.of(
            run, empty(), empty(), empty(), per, empty(), before, empty(), now, change, fraction, empty(), empty());

    /** The columns. */
    public EffectTable(CostEffect effect) {
        rows = effect.runs();
    }

    /** The table on a sheet. */
    Placed<CostEffect.OfRun> at(SheetBuilder sheet, int headRow) {
        return table.at(sheet, headRow, rows);
    }

    /** The table for JSON. */
    public Table.Filled<CostEffect.OfRun> inJson() {
        return Table.of(
                        run,
                        inJson("unitCostBefore", run -> run.unitCostBefore().orElse(null)),
                        inJson("unitCostNow", run -> run.now().unitCost().orElse(null)),
                        inJson("bulkPerKgBefore", run -> earlier(run, RunCost::bulkPerKg)),
                        inJson("bulkPerKgNow", run -> run.now().bulkPerKg()),
                        inJson("outlayBefore", run -> earlier(run, RunCost::outlay)),
                        inJson("outlayNow", run -> run.now().outlay()))
                .with(rows);
    }

    /** The table for the terminal. */
    public Table.Filled<CostEffect.OfRun> onTerminal() {
        return table.with(rows);
    }

    private static Column<CostEffect.OfRun> amount(
            String key, String heading, Function<CostEffect.OfRun, @Nullable BigDecimal> amount) {
        return Column.<CostEffect.OfRun>of(key, heading)
                .value(amount)
                .format(run -> PriceTable.money(run.now().home().getCurrencyCode()));
    }

    private static Column<CostEffect.OfRun> inJson(
            String key, Function<CostEffect.OfRun, @Nullable BigDecimal> amount) {
        return Column.<CostEffect.OfRun>of(key, "").value(amount).json();
    }

    /** A blank cell above a column that only prices have. */
    private static Column<CostEffect.OfRun> empty() {
        return Column.of("", "");
    }

    private static String title(CostEffect.OfRun run) {
        return run.now().needs().title();
    }

    /** Per unit, or per kilogram of bulk. */
    private static BigDecimal cost(RunCost run) {
        return run.unitCost().orElseGet(run::bulkPerKg);
    }

    private static @Nullable BigDecimal before(CostEffect.OfRun run) {
        return earlier(run, EffectTable::cost);
    }

    private static @Nullable BigDecimal earlier(CostEffect.OfRun run, Function<RunCost, BigDecimal> amount) {
        RunCost before = run.before();
        return before == null ? null : amount.apply(before);
    }

    private static @Nullable BigDecimal change(CostEffect.OfRun run) {
        BigDecimal before = before(run);
        return before == null ? null : cost(run.now()).subtract(before);
    }

    /** The change as a fraction of the earlier cost; null if that is unknown or zero. */
    private static @Nullable BigDecimal fraction(CostEffect.OfRun run) {
        BigDecimal before = before(run);
        return before == null || before.signum() == 0
                ? null
                : cost(run.now()).subtract(before).divide(before, MathContext.DECIMAL64);
    }

    private static String unsigned(@Nullable BigDecimal amount) {
        return amount == null ? NONE : Decimals.amount(amount, PriceTable.DECIMALS);
    }

    private static String signed(@Nullable BigDecimal change) {
        return change != null && change.signum() > 0 ? "+" + unsigned(change) : unsigned(change);
    }
}
