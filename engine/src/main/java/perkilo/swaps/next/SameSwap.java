package perkilo.swaps.next;

import java.math.BigDecimal;
import java.util.List;
import perkilo.costing.RunCost;
import perkilo.model.Material;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.trial.Trial;

/**
 * One material in the place of another in all formulas that have it.
 *
 * @param from what goes out
 * @param to what comes in
 * @param numbers of the swaps in the list, from one; a formula where it saves nothing alone has none
 * @param parts the formulas where it fits
 * @param left the formulas that have the material and where it does not fit, with the reason
 * @param ranks the smallest run of each formula, then the second smallest, and so on
 */
public record SameSwap(
        Material from, Material to, List<Integer> numbers, List<Part> parts, List<Left> left, List<Rank> ranks) {

    public SameSwap {
        numbers = List.copyOf(numbers);
        parts = List.copyOf(parts);
        left = List.copyOf(left);
        ranks = List.copyOf(ranks);
    }

    /**
     * A formula in which it fits.
     *
     * @param trial the formula before and after
     * @param runs what it changes at each run size, the smallest first
     */
    public record Part(Trial trial, List<RunChange> runs) {

        public Part {
            runs = List.copyOf(runs);
        }
    }

    /**
     * A formula in which it does not fit.
     *
     * @param formula its name
     * @param why in full sentences
     */
    public record Left(String formula, String why) {}

    /**
     * Runs of the same rank by size, one of each formula that has so many.
     *
     * @param alone what changes if each run is bought alone
     * @param now all of them bought together, as the formulas are
     * @param then all of them bought together, with the swap in each
     */
    public record Rank(List<RunChange> alone, RunCost now, RunCost then) {

        public Rank {
            alone = List.copyOf(alone);
        }

        /** What less is paid if each run is bought alone, in home currency. */
        public BigDecimal savedAlone() {
            return alone.stream()
                    .map(RunChange::outlay)
                    .reduce(BigDecimal.ZERO, BigDecimal::add)
                    .negate();
        }

        /** What less is paid if all are bought together, in home currency. */
        public BigDecimal savedTogether() {
            return now.outlay().subtract(then.outlay());
        }
    }
}
