package perkilo.swaps.blend;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Branch and bound over a linear program whose second half of variables has to be 0 or 1: decides what is in the blend.
 *
 * <p>If such a variable is neither in the answer of the linear program, the one farthest from both is tried at 0 and at
 * 1. Branches that cannot beat the best answer are dropped. {@link Answer#proven()} says whether an answer is proven.
 */
final class BlendSearch {

    /** Smaller differences count as none: a ten-thousandth of a cent per kilogram. */
    private static final double SAME = 1e-6;

    private static final double WHOLE = 1e-6;
    private static final int MOST_NODES = 20_000;

    private final LinearProgram program;
    private final SolveLinear solver;
    private double @Nullable [] best;
    private double bestCost = Double.POSITIVE_INFINITY;
    private int nodes;

    private BlendSearch(LinearProgram program, SolveLinear solver) {
        this.program = program;
        this.solver = solver;
    }

    /** The cheapest levels. */
    static final class Answer {

        private final double[] values;
        private final double cost;
        private final boolean proven;

        Answer(double[] values, double cost, boolean proven) {
            this.values = values;
            this.cost = cost;
            this.proven = proven;
        }

        /** The level of an ingredient. */
        double level(int ingredient) {
            return values[ingredient];
        }

        /** What the levels cost. */
        double cost() {
            return cost;
        }

        /** Whether no other answer costs less. */
        boolean proven() {
            return proven;
        }
    }

    /** Finds the cheapest answer; empty if there is none. */
    static Optional<Answer> find(LinearProgram program, SolveLinear solver) {
        BlendSearch search = new BlendSearch(program, solver);
        double[] least = new double[program.size()];
        double[] most = new double[program.size()];
        for (int i = 0; i < least.length; i++) {
            least[i] = program.least(i);
            most[i] = program.most(i);
        }
        search.branch(least, most);
        double[] best = search.best;
        return best == null
                ? Optional.empty()
                : Optional.of(new Answer(best, search.bestCost, search.nodes < MOST_NODES));
    }

    private void branch(double[] least, double[] most) {
        if (++nodes > MOST_NODES) {
            return;
        }
        Optional<double[]> relaxed = solver.solve(program.bounded(least, most));
        if (relaxed.isEmpty() || program.costOf(relaxed.get()) >= bestCost - SAME) {
            return;
        }
        double[] values = relaxed.get();
        int split = mostDivided(values);
        if (split < 0) {
            best = values;
            bestCost = program.costOf(values);
            return;
        }
        boolean inFirst = values[split] >= 0.5;
        branchAt(split, inFirst ? 1 : 0, least, most);
        branchAt(split, inFirst ? 0 : 1, least, most);
    }

    private void branchAt(int variable, int value, double[] least, double[] most) {
        double[] otherLeast = least.clone();
        double[] otherMost = most.clone();
        otherLeast[variable] = value;
        otherMost[variable] = value;
        branch(otherLeast, otherMost);
    }

    private int mostDivided(double[] values) {
        int most = -1;
        double farthest = WHOLE;
        for (int i = values.length / 2; i < values.length; i++) {
            double away = Math.min(Math.abs(values[i]), Math.abs(1 - values[i]));
            if (away > farthest) {
                farthest = away;
                most = i;
            }
        }
        return most;
    }
}
