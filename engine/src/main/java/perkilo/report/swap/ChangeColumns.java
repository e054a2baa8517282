package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Decimals;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;
import perkilo.swaps.label.IngredientList;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.money.RunChange;

/**
 * What a swap or a blend changes, as JSON shows it for all runs and the terminal for one.
 *
 * @param <R> what a row of the table is about
 */
final class ChangeColumns<R> {

    private static final Table<LabelChange> LABEL = Table.of(
            Column.<LabelChange>of("ingredients", "")
                    .json(label -> label.after().names()),
            Column.<LabelChange>of("ingredientsNow", "")
                    .json(label -> label.before().names()),
            Column.<LabelChange>of("allergens", "")
                    .json(label -> label.after().entries().stream()
                            .filter(IngredientList.Entry::allergen)
                            .map(IngredientList.Entry::name)
                            .toList()),
            Column.<LabelChange>of("moves", "").json(LabelChange::moves),
            Column.<LabelChange>of("enters", "").json(LabelChange::enters),
            Column.<LabelChange>of("leaves", "").json(LabelChange::leaves),
            Column.<LabelChange>of("notes", "").json(label -> label.after().notes()));

    /** The change of the first run. */
    final Column<R> perKg;

    final Column<R> perKgs;
    final Column<R> unitCosts;
    final Column<R> outlays;
    final Column<R> proven;

    /** The run that the terminal shows, and what changes there. */
    final Column<R> run;

    final Column<R> perUnit;
    final Column<R> outlay;

    /**
     * The columns.
     *
     * @param runs all that change
     * @param shown the one that the terminal shows
     * @param currency the home currency
     */
    ChangeColumns(Function<R, List<RunChange>> runs, Function<R, RunChange> shown, String currency) {
        perKg = Column.<R>of("perKgChange", "").notOnSheet().json(row -> {
            List<RunChange> all = runs.apply(row);
            return all.isEmpty() ? null : all.get(0).perKg();
        });
        perKgs = byRun("perKgChanges", runs, RunChange::perKg);
        unitCosts = byRun("unitCostChange", runs, run -> run.unitCost().orElse(null));
        outlays = byRun("outlayChange", runs, RunChange::outlay);
        proven = byRun("proven", runs, run -> run.after().purchase().proven());
        run = Column.<R>of("run", "Run")
                .notOnSheet()
                .terminal(row -> shown.apply(row).before().needs().title());
        perUnit = Column.<R>of("perUnit", "Per unit, " + currency)
                .notOnSheet()
                .terminal(row ->
                        shown.apply(row).unitCost().map(one -> signed(one, 4)).orElse("–"));
        outlay = Column.<R>of("outlay", "Outlay")
                .notOnSheet()
                .terminal(row -> signed(shown.apply(row).outlay(), 2));
    }

    /** What changes in the list of ingredients. */
    static <R> Column<R> label(Function<R, LabelChange> label) {
        return Column.<R>of("label", "").notOnSheet().json(row -> LABEL.one(label.apply(row)));
    }

    /** Only the runs that have an answer. */
    private static <R> Column<R> byRun(
            String key, Function<R, List<RunChange>> runs, Function<RunChange, @Nullable Object> answer) {
        return Column.<R>of(key, "").notOnSheet().json(row -> {
            Map<String, Object> answers = new LinkedHashMap<>();
            for (RunChange run : runs.apply(row)) {
                Object one = answer.apply(run);
                if (one != null) {
                    answers.put(run.key(), one);
                }
            }
            return answers;
        });
    }

    private static String signed(BigDecimal change, int decimals) {
        return (change.signum() > 0 ? "+" : "") + Decimals.amount(change, decimals);
    }
}
