package perkilo.swaps;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import perkilo.model.Formula;
import perkilo.swaps.closeness.Closeness;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.trial.Trial;

/**
 * A material that could replace another: a candidate for the bench, not a release.
 *
 * @param trial the recipe before and after
 * @param closeness how close the two materials are
 * @param verdicts what each gate says; all are open
 * @param runs what it changes at each run size, in the order of the book
 * @param label what it changes in the list of ingredients
 * @param cautions what a person should check, each in full sentences
 */
public record Swap(
        Trial trial,
        Closeness closeness,
        List<Verdict> verdicts,
        List<RunChange> runs,
        LabelChange label,
        List<String> cautions) {

    public Swap {
        verdicts = List.copyOf(verdicts);
        runs = List.copyOf(runs);
        cautions = List.copyOf(cautions);
    }

    /** The formula as it is. */
    public Formula formula() {
        return trial.before().formula();
    }

    /** The level of the candidate in this line, as a fraction. */
    public BigDecimal newLevel() {
        return trial.dose().to();
    }

    /**
     * Whether it makes a run cheaper, or takes less cash, by at least a part of the raw material cost, at some run
     * size.
     *
     * @param least as a fraction of the raw material cost of the run
     */
    public boolean saves(BigDecimal least) {
        return runs.stream().anyMatch(run -> run.savesAtLeast(least));
    }

    /** Whether it makes a run cheaper, or takes less cash, at some run size. */
    public boolean saves() {
        return runs.stream().anyMatch(run -> run.isCheaper() || run.takesLessCash());
    }

    /** The mean, over all run sizes, of the change as a fraction of what the run costs now; below zero is a saving. */
    public BigDecimal meanChange() {
        return runs.stream()
                .map(run -> run.before().total().signum() == 0
                        ? BigDecimal.ZERO
                        : run.total().divide(run.before().total(), MathContext.DECIMAL64))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(Math.max(1, runs.size())), MathContext.DECIMAL64);
    }

    /**
     * The rank in the list: the mean change times closeness, so that a saving counts for less if the material is less
     * close. Below zero is a saving.
     */
    public BigDecimal rank() {
        return meanChange().multiply(closeness.score()).movePointLeft(2);
    }

    /** The change at the largest run: the one whose total is highest now. */
    public RunChange atLargestRun() {
        return runs.stream()
                .reduce((one, other) ->
                        other.before().total().compareTo(one.before().total()) > 0 ? other : one)
                .orElseThrow();
    }
}
