package perkilo.report.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Decimals;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.money.RunChange;

/** The table of swaps: which material could replace which, ranked, with the saving at each run size. */
public final class SwapTable {

    private static final int MOST_RUNS = 6;
    private static final int WIDE_AMOUNT = 12;

    private final List<Numbered<Swap>> rows;
    private final List<OfRun> runs = new ArrayList<>();
    private final CandidateColumns<Numbered<Swap>> line = new CandidateColumns<>(
            row -> row.entry().trial(),
            row -> row.entry().closeness(),
            row -> row.entry().verdicts());
    private final ChangeColumns<Numbered<Swap>> changes;

    final Column<Numbered<Swap>> number = Column.<Numbered<Swap>>of("number", "No.")
            .value(Numbered::figure)
            .format(NumberFormat.WHOLE)
            .width(6)
            .json(Numbered::number)
            .terminal(row -> Integer.toString(row.number()));
    final Column<Numbered<Swap>> formula = line.formula()
            .link(row -> row.entry().formula().origin())
            .terminal(row -> row.entry().formula().name());
    final Column<Numbered<Swap>> phase = line.phase();
    final Column<Numbered<Swap>> material = line.material()
            .look(Look.LABEL)
            .terminal(row -> row.entry().trial().from().name());
    final Column<Numbered<Swap>> role = line.role();
    final Column<Numbered<Swap>> level = line.level();
    final Column<Numbered<Swap>> candidate = line.candidate()
            .link(row -> row.entry().trial().to().origin())
            .look(Look.LABEL)
            .terminal(row -> row.entry().trial().to().name());
    final Column<Numbered<Swap>> newLevel = Column.<Numbered<Swap>>of("newPercent", "New level")
            .value(row -> row.entry().newLevel())
            .format(NumberFormat.PERCENT)
            .width(9)
            .json(row -> row.entry().newLevel().movePointRight(2))
            .terminal(row -> Decimals.readable(row.entry().newLevel().movePointRight(2), 3) + " %");
    final Column<Numbered<Swap>> closeness = line.closeness();
    final Column<Numbered<Swap>> closenessBest = line.closenessBest();
    private final Column<Numbered<Swap>> naturalNow =
            natural("Natural origin now", row -> row.entry().trial().before().naturalOrigin());
    private final Column<Numbered<Swap>> naturalThen =
            natural("Natural origin then", row -> row.entry().trial().after().naturalOrigin());
    private final Column<Numbered<Swap>> allergens = Column.<Numbered<Swap>>of("allergens", "Allergens")
            .words(row -> allergens(row.entry()))
            .width(40);
    private final Column<Numbered<Swap>> enters = Column.<Numbered<Swap>>of("enters", "Enters the label")
            .words(row -> String.join(", ", row.entry().label().enters()))
            .width(44);
    private final Column<Numbered<Swap>> leaves = Column.<Numbered<Swap>>of("leaves", "Leaves the label")
            .words(row -> String.join(", ", row.entry().label().leaves()))
            .width(44);
    private final Column<Numbered<Swap>> label =
            ChangeColumns.label(row -> row.entry().label());
    private final Column<Numbered<Swap>> cautions = Column.<Numbered<Swap>>of("cautions", "Cautions")
            .words(row -> String.join(" ", row.entry().cautions()))
            .look(row -> row.entry().cautions().isEmpty() ? Look.PLAIN : Look.WARNING)
            .width(110)
            .json(row -> row.entry().cautions());
    private final Column<Numbered<Swap>> byTrait = Column.<Numbered<Swap>>of(
                    "closenessByFact", "Facts: line → candidate, and what each adds to closeness")
            .words(row -> row.entry().closeness().words())
            .width(110);

    /** What a swap changes at one run size. */
    static final class OfRun {

        final Column<Numbered<Swap>> run;
        final Column<Numbered<Swap>> unitCostNow;
        final Column<Numbered<Swap>> unitCostThen;
        final Column<Numbered<Swap>> unitCostChange;
        final Column<Numbered<Swap>> perKgChange;
        final Column<Numbered<Swap>> outlayThen;
        final Column<Numbered<Swap>> outlayChange;

        private OfRun(int index, String suffix, String currency) {
            Function<Numbered<Swap>, @Nullable RunChange> change = row -> runOf(row.entry(), index);
            RunColumns<Numbered<Swap>> columns = new RunColumns<>(change, currency, suffix);
            run = columns.run().width(22);
            unitCostNow = columns.unitCostNow().width(WIDE_AMOUNT);
            unitCostThen = columns.unitCostThen().width(WIDE_AMOUNT);
            unitCostChange = columns.unitCostChange(unitCostNow, unitCostThen)
                    .width(WIDE_AMOUNT)
                    .mark(Mark.where(ResultSheet.Condition.ABOVE_ZERO, Look.WARNING))
                    .mark(Mark.where(ResultSheet.Condition.LOWEST_OF_RANGE, Look.ANSWER));
            perKgChange = columns.perKgChange().width(WIDE_AMOUNT);
            outlayThen = columns.outlayThen().width(WIDE_AMOUNT);
            outlayChange = columns.outlayChange()
                    .formula(row -> {
                        RunChange one = change.apply(row.entry());
                        return one == null
                                ? null
                                : row.ref(outlayThen).minus(Expr.of(one.before().outlay()));
                    })
                    .width(WIDE_AMOUNT)
                    .mark(Mark.where(ResultSheet.Condition.ABOVE_ZERO, Look.WARNING));
        }

        private List<Column<Numbered<Swap>>> all() {
            return List.of(run, unitCostNow, unitCostThen, unitCostChange, perKgChange, outlayThen, outlayChange);
        }
    }

    /** The swaps of an answer. */
    public SwapTable(SwapOutcome.Found found) {
        rows = Numbered.all(found.swaps());
        String currency = found.book().settings().home().getCurrencyCode();
        changes = new ChangeColumns<>(
                row -> row.entry().runs(), row -> row.entry().atLargestRun(), currency);
        int most = 0;
        for (Swap swap : found.swaps()) {
            most = Math.max(most, Math.min(MOST_RUNS, swap.runs().size()));
        }
        for (int index = 0; index < most; index++) {
            runs.add(new OfRun(index, most == 1 ? "" : " " + (index + 1), currency));
        }
    }

    private static @Nullable RunChange runOf(Swap swap, int index) {
        return index < swap.runs().size() ? swap.runs().get(index) : null;
    }

    /** What changes at each run size, in the order of the book. */
    List<OfRun> runs() {
        return runs;
    }

    /** The table on a sheet. */
    Placed<Numbered<Swap>> at(SheetBuilder sheet, int headRow) {
        List<Column<Numbered<Swap>>> columns = new ArrayList<>(
                List.of(number, formula, phase, material, role, level, candidate, newLevel, closeness, closenessBest));
        runs.forEach(run -> columns.addAll(run.all()));
        columns.addAll(List.of(naturalNow, naturalThen, allergens, enters, leaves, cautions, byTrait));
        return new Table<>(columns).at(sheet, headRow, rows);
    }

    /** The table for JSON, with all swaps. */
    public Table.Filled<?> inJson() {
        return Table.of(
                        number,
                        formula,
                        phase,
                        material,
                        role,
                        level,
                        candidate,
                        closeness,
                        closenessBest,
                        line.shares(),
                        line.gates(),
                        newLevel,
                        changes.perKg,
                        changes.perKgs,
                        changes.unitCosts,
                        changes.outlays,
                        changes.proven,
                        label,
                        cautions)
                .with(rows);
    }

    /**
     * The table for the terminal.
     *
     * @param most rows that are shown
     */
    public Table.Filled<?> onTerminal(int most) {
        return Table.of(
                        number,
                        formula,
                        material,
                        candidate,
                        newLevel,
                        closeness,
                        changes.run,
                        changes.perUnit,
                        changes.outlay)
                .with(rows.subList(0, Math.min(most, rows.size())));
    }

    private static Column<Numbered<Swap>> natural(String heading, Function<Numbered<Swap>, NaturalOrigin> origin) {
        return Column.<Numbered<Swap>>of(heading, heading)
                .value(row -> {
                    NaturalOrigin content = origin.apply(row);
                    return content.isComplete() ? content.known() : null;
                })
                .words(row -> TraitColumn.UNKNOWN)
                .wordsLook(Look.HINT)
                .format(NumberFormat.PERCENT)
                .width(WIDE_AMOUNT);
    }

    private static String allergens(Swap swap) {
        return swap.verdicts().stream()
                .filter(verdict -> verdict.gate().equals(Gates.ALLERGENS))
                .map(Verdict::why)
                .findFirst()
                .orElse("");
    }
}
