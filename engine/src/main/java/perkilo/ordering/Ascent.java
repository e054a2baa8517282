package perkilo.ordering;

import java.util.function.Consumer;

/**
 * Raises the bound of a node by a deflected subgradient with Polyak steps.
 *
 * <p>The price of a rule rises where the items' own plans break it, and falls where they keep it with room to spare.
 * Every plan that the items make on the way is tried as a plan of its own.
 */
final class Ascent {
    private static final int PATIENCE = 8;
    private static final double SHRINK = 0.6;
    private static final double SHORTEST = 0.004;

    final Relaxation relaxation;
    final Averages averages;

    private final Market market;
    private final Incumbent incumbent;
    private final Deadline deadline;
    private double[] reducedCostAtBest = {};

    Ascent(Planning planning, Deadline deadline) {
        this.market = planning.market;
        this.incumbent = planning.incumbent;
        this.deadline = deadline;
        relaxation = new Relaxation(planning);
        averages = new Averages(market);
    }

    /** By order: its reduced cost where the bound was best. */
    double[] reducedCost() {
        return reducedCostAtBest;
    }

    /**
     * Raises the bound of the node, and leaves the best bound and prices there.
     *
     * @param steps how many evaluations at most
     * @param firstLength of a step, as a share of the way to the best plan
     * @param watcher sees each evaluation's number
     * @return the best bound found here; infinite if the node holds no plan
     */
    double raise(Node node, int steps, double firstLength, Consumer<Integer> watcher) {
        Multipliers now = node.prices.copy();
        Multipliers best = node.prices.copy();
        double bestBound = Double.NEGATIVE_INFINITY;
        double length = firstLength;
        int stalled = 0;
        averages.clear();
        Direction direction = new Direction(market);
        for (int step = 0; step < steps && !deadline.over(); step++) {
            double bound = relaxation.at(now, node.decisions);
            if (bound == Double.POSITIVE_INFINITY) {
                node.bound = bound;
                return bound;
            }
            incumbent.offer(relaxation.joint());
            averages.add(relaxation);
            if (bound > bestBound) {
                stalled = bound > bestBound + 1e-6 * Math.abs(bestBound) ? 0 : stalled + 1;
                bestBound = bound;
                best.takeFrom(now);
                reducedCostAtBest = relaxation.reducedCost.clone();
            } else if (++stalled >= PATIENCE) {
                length *= SHRINK;
                stalled = 0;
                now.takeFrom(best);
            }
            watcher.accept(step);
            if (bestBound >= BranchAndBound.cutoff(incumbent) || length < firstLength * SHORTEST) {
                break;
            }
            if (!move(direction, node.decisions, now, bound, length)) {
                break;
            }
        }
        node.prices = best;
        node.bound = Math.max(node.bound, bestBound);
        return bestBound;
    }

    /**
     * Moves the prices.
     *
     * @return false if all rules are kept already
     */
    private boolean move(Direction direction, Decisions decisions, Multipliers now, double bound, double length) {
        double norm = direction.turn(relaxation, decisions, now);
        if (norm < 1e-12) {
            return false;
        }
        double best = incumbent.total();
        double target = best < Double.POSITIVE_INFINITY ? best : bound + 0.05 * Math.abs(bound);
        direction.move(now, decisions, length * Math.max(1e-6, target - bound) / norm);
        return true;
    }
}
