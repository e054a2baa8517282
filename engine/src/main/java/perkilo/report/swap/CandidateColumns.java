package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.model.Formula;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;
import perkilo.swaps.closeness.Closeness;
import perkilo.swaps.closeness.TraitShare;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.role.Role;
import perkilo.swaps.trial.Trial;

/**
 * Columns that say which material would replace which in a line of a formula, and how close the two are. Each method
 * makes a new column.
 *
 * @param <R> what a row of the table is about
 */
final class CandidateColumns<R> {

    private static final NumberFormat SCORE = new NumberFormat("0.0");

    private static final Table<TraitShare> SHARES = Table.of(
            Column.<TraitShare>of("trait", "").json(TraitShare::trait),
            Column.<TraitShare>of("weight", "").json(TraitShare::weight),
            Column.<TraitShare>of("share", "").json(TraitShare::share),
            Column.<TraitShare>of("known", "").json(TraitShare::known),
            Column.<TraitShare>of("replaced", "").json(TraitShare::replaced),
            Column.<TraitShare>of("candidate", "").json(TraitShare::candidate));

    private static final Table<Verdict> GATES = Table.of(
            Column.<Verdict>of("gate", "").json(verdict -> verdict.gate().name()),
            Column.<Verdict>of("ok", "").json(Verdict::ok),
            Column.<Verdict>of("why", "").json(Verdict::why));

    private final Function<R, Trial> trial;
    private final Function<R, Closeness> closeness;
    private final Function<R, List<Verdict>> verdicts;

    /**
     * Makes columns.
     *
     * @param trial the recipe before and after
     * @param closeness how close the two materials are
     * @param verdicts what each gate says
     */
    CandidateColumns(Function<R, Trial> trial, Function<R, Closeness> closeness, Function<R, List<Verdict>> verdicts) {
        this.trial = trial;
        this.closeness = closeness;
        this.verdicts = verdicts;
    }

    Column<R> formula() {
        return Column.<R>of("formula", "Formula")
                .words(row -> trial.apply(row).before().formula().name())
                .width(14)
                .json();
    }

    Column<R> phase() {
        return Column.<R>of("phase", "Phase")
                .words(row -> line(row).phase())
                .width(7)
                .json();
    }

    /** What would be replaced; a click leads to its line in the formula. */
    Column<R> material() {
        return Column.<R>of("material", "Material")
                .words(row -> trial.apply(row).from().name())
                .link(row -> line(row).origin())
                .width(33)
                .json();
    }

    /** The level of what would be replaced, as a live formula if a person typed it. */
    Column<R> level() {
        return Column.<R>of("percent", "Level")
                .value(this::levelNow)
                .formula(row -> {
                    Figure typed = line(row.entry()).level();
                    return typed == null ? Expr.of(levelNow(row.entry())) : Expr.input(typed);
                })
                .link(row -> {
                    Figure typed = line(row).level();
                    return typed == null ? Origin.NONE : typed.origin();
                })
                .format(NumberFormat.PERCENT)
                .width(8)
                .json(row -> levelNow(row).movePointRight(2));
    }

    Column<R> candidate() {
        return Column.<R>of("candidate", "Candidate")
                .words(row -> trial.apply(row).to().name())
                .width(35)
                .json();
    }

    /** What the material of the line is in the formula for. */
    Column<R> role() {
        return Column.<R>of("role", "Role")
                .words(row -> role(trial.apply(row).role()))
                .width(22)
                .json();
    }

    /** The closeness by which swaps are ranked: unknown facts count as far. */
    Column<R> closeness() {
        return Column.<R>of("closeness", "Closeness at worst")
                .value(row -> closeness.apply(row).worst())
                .format(SCORE)
                .width(10)
                .json()
                .terminal("Close", row -> closeness.apply(row).range());
    }

    /** The closeness if every unknown fact is alike. */
    Column<R> closenessBest() {
        return Column.<R>of("closenessBest", "Closeness at best")
                .value(row -> closeness.apply(row).best())
                .format(SCORE)
                .width(10)
                .json();
    }

    private static String role(@Nullable Role role) {
        return role == null ? TraitColumn.UNKNOWN : role.name();
    }

    /** What each trait adds to closeness. */
    Column<R> shares() {
        return Column.<R>of("closenessShares", "")
                .notOnSheet()
                .json(row -> SHARES.with(closeness.apply(row).shares()));
    }

    Column<R> gates() {
        return Column.<R>of("gates", "").notOnSheet().json(row -> GATES.with(verdicts.apply(row)));
    }

    private Formula.Line line(R row) {
        return trial.apply(row).portion().line();
    }

    private BigDecimal levelNow(R row) {
        return trial.apply(row).dose().from();
    }
}
