package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.swaps.money.RunChange;

/**
 * Columns of what a changed formula changes at one run: amounts are fixed values from full purchase plans, changes are
 * formulas over them. Each method makes a new column.
 *
 * @param <R> what a row of the table is about
 * @param change the run before and after; null if a row has no such run
 * @param currency the home currency
 * @param suffix of each heading, to tell runs apart
 */
record RunColumns<R>(Function<R, @Nullable RunChange> change, String currency, String suffix) {

    Column<R> run() {
        return Column.<R>of("run" + suffix, "Run" + suffix).words(row -> {
            RunChange run = change.apply(row);
            return run == null ? null : run.before().needs().title();
        });
    }

    Column<R> unitCostNow() {
        return unitCost("Unit cost now", RunChange::before);
    }

    Column<R> unitCostThen() {
        return unitCost("Unit cost then", RunChange::after);
    }

    private Column<R> unitCost(String heading, Function<RunChange, RunCost> side) {
        return amount(heading, 4, run -> side.apply(run).unitCost().orElse(null));
    }

    Column<R> unitCostChange(Column<R> now, Column<R> then) {
        return amount("Unit cost change", 4, run -> run.unitCost().orElse(null))
                .formula(row -> row.has(then) ? row.ref(then).minus(row.ref(now)) : null)
                .look(Look.KEY);
    }

    Column<R> perKgChange() {
        return amount("Per kg change", 4, RunChange::perKg);
    }

    Column<R> outlayNow() {
        return amount("Outlay now", 2, run -> run.before().outlay());
    }

    Column<R> outlayThen() {
        return amount("Outlay then", 2, run -> run.after().outlay());
    }

    Column<R> outlayChange() {
        return amount("Outlay change", 2, RunChange::outlay);
    }

    private Column<R> amount(String heading, int decimals, Function<RunChange, @Nullable BigDecimal> amount) {
        return Column.<R>of(heading + suffix, heading + suffix)
                .value(row -> {
                    RunChange run = change.apply(row);
                    return run == null ? null : amount.apply(run);
                })
                .format(NumberFormat.money(currency, decimals));
    }
}
