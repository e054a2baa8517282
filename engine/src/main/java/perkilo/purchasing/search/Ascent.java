package perkilo.purchasing.search;

import java.util.function.IntConsumer;

/**
 * Raises the bound of a node.
 *
 * <p>An exact evaluation plans every item anew, which takes time. Between two of them the prices climb on guesses,
 * which use the plans known already. The steps are those of a deflected subgradient with Polyak's length: the price of
 * a rule rises while the items' own plans break it, and falls while they keep it with room to spare. The next exact
 * evaluation is made where the guess is highest, or nearer to the best prices so far if the last guess was far off.
 * Every plan that the items make on the way is tried as a plan of its own.
 */
final class Ascent {
    /** Guesses between two exact evaluations. */
    private static final int GUESSES = 40;

    /** Guesses at the effect of a decision. */
    private static final int FEW_GUESSES = 10;

    private static final int PATIENCE = 8;
    private static final double SHRINK = 0.6;
    private static final double SHORTEST = 0.004;
    /** The least rise of a guess above the bound that is worth following, as a share of the gap to the best plan. */
    private static final double SETTLED = 0.002;

    final Relaxation relaxation;
    final Averages averages;

    private final SearchMarket market;
    private final Incumbent incumbent;
    private final Deadline deadline;
    private final PlanPool pool;
    private final Relaxation guess;
    private double[] reducedCostAtBest = {};

    Ascent(Planning planning, Deadline deadline) {
        this.market = planning.market;
        this.incumbent = planning.incumbent;
        this.deadline = deadline;
        MixedDuty duty = new MixedDuty(market);
        relaxation = new Relaxation(market, planning, duty);
        averages = new Averages(market);
        pool = new PlanPool(market);
        guess = new Relaxation(market, pool, duty);
    }

    double cutoff() {
        return BranchAndBound.cutoff(incumbent);
    }

    /** By order: its reduced cost where the bound was best. */
    double[] reducedCost() {
        return reducedCostAtBest;
    }

    /**
     * Raises the bound of the node, and leaves the best bound and prices there.
     *
     * @param steps how many exact evaluations at most
     * @param firstLength of a guessed step, as a share of the way to the best plan
     * @param watcher sees each evaluation's number
     * @return the best bound found here; infinite if the node holds no plan
     */
    double raise(Node node, int steps, double firstLength, IntConsumer watcher) {
        Multipliers now = node.prices.copy();
        Multipliers best = node.prices.copy();
        double bestBound = Double.NEGATIVE_INFINITY;
        double boldness = 1;
        double length = firstLength;
        averages.clear();
        relaxation.touch(node.decisions, incumbent.best());
        for (int step = 0; step < steps && !deadline.over(); step++) {
            double bound = relaxation.at(now, node.decisions);
            if (bound == Double.POSITIVE_INFINITY) {
                node.bound = bound;
                return bound;
            }
            incumbent.offer(relaxation.joint());
            pool.add(relaxation.picks);
            if (bound > bestBound) {
                boldness = Math.min(1, 1.5 * boldness);
                bestBound = bound;
                best.takeFrom(now);
                reducedCostAtBest = relaxation.reducedCost.clone();
            } else {
                boldness *= 0.7;
                length *= 0.85;
            }
            watcher.accept(step);
            if (bestBound >= BranchAndBound.cutoff(incumbent)) {
                break;
            }
            double guessed = climb(node.decisions, best, now, length, GUESSES);
            if (guessed - bestBound < SETTLED * (target(bestBound) - bestBound)) {
                break;
            }
            now.moveTowards(best, 1 - boldness);
        }
        node.prices = best;
        node.bound = Math.max(node.bound, bestBound);
        return bestBound;
    }

    /** How high the bound of a node may get, judged by the known plans. */
    double promise(Node node, double firstLength) {
        return climb(node.decisions, node.prices, node.prices.copy(), firstLength, FEW_GUESSES);
    }

    /**
     * Raises the guess.
     *
     * @param from the prices to start at
     * @param highest set to the prices where the guess is highest
     * @return the highest guess
     */
    private double climb(Decisions decisions, Multipliers from, Multipliers highest, double firstLength, int guesses) {
        Multipliers now = from.copy();
        highest.takeFrom(from);
        Direction direction = new Direction(market);
        double most = Double.NEGATIVE_INFINITY;
        double length = firstLength;
        int stalled = 0;
        for (int step = 0; step < guesses; step++) {
            double guessed = guess.at(now, decisions);
            if (guesses == GUESSES) {
                averages.add(guess);
            }
            if (guessed > most) {
                stalled = guessed > most + 1e-7 * Math.abs(most) ? 0 : stalled + 1;
                most = guessed;
                highest.takeFrom(now);
            } else if (++stalled >= PATIENCE) {
                length *= SHRINK;
                stalled = 0;
                now.takeFrom(highest);
            }
            if (length < firstLength * SHORTEST || !move(direction, decisions, now, guessed, length)) {
                break;
            }
        }
        return most;
    }

    /**
     * Moves the prices.
     *
     * @return false if all rules are kept already
     */
    private boolean move(Direction direction, Decisions decisions, Multipliers now, double bound, double length) {
        double norm = direction.turn(guess, decisions, now);
        if (norm < 1e-12) {
            return false;
        }
        direction.move(now, decisions, length * Math.max(1e-6, target(bound) - bound) / norm);
        return true;
    }

    /** How high the bound may get: to the best plan, or somewhat above its present height. */
    private double target(double bound) {
        double best = incumbent.total();
        return best < Double.POSITIVE_INFINITY ? best : bound + 0.05 * Math.abs(bound);
    }
}
