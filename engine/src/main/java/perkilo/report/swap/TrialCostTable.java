package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.model.Settings;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.next.NextSteps;
import perkilo.swaps.next.TrialCost;

/** The table of what it costs to try each swap and blend, and how many units pay that back at each run size. */
public final class TrialCostTable {

    private static final int MOST_RUNS = 6;
    /** The most swaps that the sheet shows, in the order of their list; JSON has all. */
    private static final int MOST_SWAPS = 30;

    /** Where a part of the cost is not known. */
    private static final NumberFormat AT_LEAST = new NumberFormat("\"≥ \"#,##0");

    private static final String NEVER = "never";
    private static final String UNKNOWN = "not known";

    private final List<TrialCost> rows;
    private final List<Column<TrialCost>> columns = new ArrayList<>();
    private final List<Column<TrialCost>> firstOfRuns = new ArrayList<>();
    final Column<TrialCost> cost;
    final Column<TrialCost> last;

    /** The trials of an answer. */
    public TrialCostTable(SwapOutcome.Found found, NextSteps next) {
        rows = next.trials();
        NumberFormat money = NumberFormat.money(found.book().settings().home().getCurrencyCode(), 2);
        NumberFormat small = NumberFormat.money(found.book().settings().home().getCurrencyCode(), 4);
        Column<TrialCost> materials = Column.<TrialCost>of("materials", "Materials")
                .value(TrialCost::materials)
                .words(row -> UNKNOWN)
                .wordsLook(Look.HINT)
                .format(money)
                .width(13)
                .json();
        List<Column<TrialCost>> parts = List.of(
                materials,
                test("stabilityTest", "Stability test", Settings.Testing::stability, money),
                test("challengeTest", "Challenge test", Settings.Testing::challenge, money),
                test("assessment", "Assessment", Settings.Testing::assessment, money));
        cost = Column.<TrialCost>of("cost", "Cost of the trial")
                .value(TrialCost::known)
                .formula(row -> row.sum(parts))
                .format(money)
                .look(Look.KEY)
                .width(14)
                .json();
        columns.add(Column.<TrialCost>of("choice", "Trial of")
                .words(TrialCost::choice)
                .width(10)
                .json());
        columns.add(Column.<TrialCost>of("formula", "Formula")
                .words(row -> row.formula().name())
                .width(16)
                .json());
        columns.add(Column.<TrialCost>of("change", "Change")
                .words(TrialCostTable::change)
                .look(Look.LABEL)
                .width(48)
                .json());
        columns.add(Column.<TrialCost>of("packs", "Smallest purchase")
                .words(TrialCostTable::packs)
                .width(44)
                .json(TrialCost::packs));
        columns.addAll(parts);
        columns.add(cost);
        columns.add(Column.<TrialCost>of("notKnown", "Without")
                .words(row -> String.join(", ", row.notKnown()))
                .look(Look.NOTICE)
                .width(22)
                .json(TrialCost::notKnown));
        columns.add(Column.<TrialCost>of("unitsToPayBack", "").notOnSheet().json(TrialCostTable::payBacks));
        int most = rows.stream().mapToInt(row -> row.runs().size()).max().orElse(0);
        for (int index = 0; index < Math.min(MOST_RUNS, most); index++) {
            addRun(index, most == 1 ? "" : " " + (index + 1), small);
        }
        last = columns.get(columns.size() - 1);
    }

    private void addRun(int index, String suffix, NumberFormat money) {
        Column<TrialCost> run = Column.<TrialCost>of("run" + suffix, "Run" + suffix)
                .words(row -> {
                    RunChange change = run(row, index);
                    return change == null ? null : change.before().needs().title();
                })
                .width(24);
        Column<TrialCost> saving = Column.<TrialCost>of("saving" + suffix, "Saving per unit" + suffix)
                .value(row -> {
                    RunChange change = run(row, index);
                    return change == null ? null : TrialCost.saving(change);
                })
                .format(money)
                .width(13);
        Column<TrialCost> units = Column.<TrialCost>of("units" + suffix, "Units to pay back" + suffix)
                .value(row -> paysBack(row, index))
                .formula(row -> {
                    BigDecimal exact = paysBack(row.entry(), index);
                    return exact == null
                            ? null
                            : row.ref(cost).over(row.ref(saving)).roundedUp(exact);
                })
                .words(row -> notPaidBack(row, index))
                .format(row -> row.notKnown().isEmpty() ? NumberFormat.WHOLE : AT_LEAST)
                .look(Look.KEY)
                .wordsLook(Look.HINT)
                .width(13);
        firstOfRuns.add(run);
        columns.add(run);
        columns.add(saving);
        columns.add(units);
    }

    private static Column<TrialCost> test(
            String key, String heading, Function<Settings.Testing, @Nullable Figure> price, NumberFormat money) {
        return Column.<TrialCost>of(key, heading)
                .value(row -> {
                    Figure typed = price.apply(row.tests());
                    return typed == null ? null : typed.value();
                })
                .formula(row -> {
                    Figure typed = price.apply(row.entry().tests());
                    return typed == null ? null : Expr.input(typed);
                })
                .link(row -> {
                    Figure typed = price.apply(row.tests());
                    return typed == null ? Origin.NONE : typed.origin();
                })
                .words(row -> UNKNOWN)
                .wordsLook(Look.HINT)
                .format(money)
                .width(13)
                .json(row -> {
                    Figure typed = price.apply(row.tests());
                    return typed == null ? null : typed.value();
                });
    }

    private static @Nullable RunChange run(TrialCost trial, int index) {
        return index < trial.runs().size() ? trial.runs().get(index) : null;
    }

    private static @Nullable BigDecimal paysBack(TrialCost trial, int index) {
        RunChange change = run(trial, index);
        return change == null || trial.isCostUnknown()
                ? null
                : trial.paysBack(change).orElse(null);
    }

    private static @Nullable String notPaidBack(TrialCost trial, int index) {
        RunChange change = run(trial, index);
        if (change == null) {
            return null;
        }
        return trial.paysBack(change).isEmpty() ? NEVER : UNKNOWN;
    }

    private static Map<String, Object> payBacks(TrialCost trial) {
        Map<String, Object> units = new LinkedHashMap<>();
        for (RunChange run : trial.runs()) {
            Optional<BigDecimal> count = trial.paysBack(run);
            units.put(run.key(), count.isEmpty() ? NEVER : trial.isCostUnknown() ? UNKNOWN : count.get());
        }
        return units;
    }

    private static String change(TrialCost trial) {
        String out = String.join(", ", trial.out());
        String in = String.join(", ", trial.in());
        if (in.isEmpty()) {
            return out.isEmpty() ? "other levels of the same materials" : "without " + out;
        }
        return out.isEmpty() ? "with " + in : out + " → " + in;
    }

    private static String packs(TrialCost trial) {
        if (trial.materials() == null) {
            return "cannot be bought alone";
        }
        return trial.packs().isEmpty() ? "nothing that is not in the formula" : String.join("; ", trial.packs());
    }

    /** The table on a sheet. */
    Placed<TrialCost> at(SheetBuilder sheet, int headRow) {
        return new Table<>(columns).at(sheet, headRow, shown());
    }

    private List<TrialCost> shown() {
        List<TrialCost> shown = new ArrayList<>();
        int swaps = 0;
        for (TrialCost trial : rows) {
            swaps += trial.isOfBlend() ? 0 : 1;
            if (trial.isOfBlend() || swaps <= MOST_SWAPS) {
                shown.add(trial);
            }
        }
        return shown;
    }

    /** How many trials the sheet does not show. */
    int left() {
        return rows.size() - shown().size();
    }

    /** The first column of each run. */
    List<Column<TrialCost>> firstOfRuns() {
        return firstOfRuns;
    }

    /** The column with the names of what changes. */
    Column<TrialCost> changes() {
        return columns.get(2);
    }

    /** The table for JSON. */
    public Table.Filled<?> inJson() {
        return new Table<>(columns).with(rows);
    }
}
