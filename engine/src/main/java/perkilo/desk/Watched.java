package perkilo.desk;

import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;

/**
 * Passes the progress of a stage of work on to a watch, in the types that the working packages use.
 *
 * <p>One class instead of several lambdas, because each lambda costs time at start-up.
 */
final class Watched implements BooleanSupplier, IntConsumer, BiConsumer<Integer, Integer> {

    private final Watch watch;
    private final Stage stage;
    private final int of;
    private int done;

    /**
     * A stage.
     *
     * @param of how many pieces it has; 0 if that is not known
     */
    Watched(Watch watch, Stage stage, int of) {
        this.watch = watch;
        this.stage = stage;
        this.of = of;
    }

    /** Whether the work should stop. */
    @Override
    public boolean getAsBoolean() {
        return watch.isCancelled();
    }

    /** Reports how many pieces are done. */
    @Override
    public void accept(int pieces) {
        watch.at(stage, pieces, of);
    }

    /** Reports how many pieces are done, and how many there are. */
    @Override
    public void accept(Integer pieces, Integer all) {
        watch.at(stage, pieces, all);
    }

    /** Reports that one more piece is done; several threads may call it. */
    synchronized void step() {
        done++;
        watch.at(stage, done, of);
    }

    /** A planner that reports each plan as a piece. */
    PlanPurchases counting(PlanPurchases planner) {
        return new Counting(planner);
    }

    private final class Counting implements PlanPurchases {

        private final PlanPurchases planner;

        Counting(PlanPurchases planner) {
            this.planner = planner;
        }

        @Override
        public PlanOutcome plan(PurchaseProblem problem, SearchLimits limits) {
            PlanOutcome outcome = planner.plan(problem, limits);
            step();
            return outcome;
        }
    }
}
