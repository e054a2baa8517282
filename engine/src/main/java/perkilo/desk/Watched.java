package perkilo.desk;

import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;

/**
 * A stage of work that a watch looks at, in the words of the packages that do the work.
 *
 * <p>One class instead of a lambda each: every start of the program runs through here.
 */
final class Watched implements BooleanSupplier, IntConsumer, BiConsumer<Integer, Integer> {

    private final Watch watch;
    private final Stage stage;
    private final int of;
    private int done;

    /**
     * A stage.
     *
     * @param of how many pieces it has; 0 where that is not known
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

    /** So many pieces are done. */
    @Override
    public void accept(int pieces) {
        watch.at(stage, pieces, of);
    }

    /** So many pieces are done, and there are so many. */
    @Override
    public void accept(Integer pieces, Integer all) {
        watch.at(stage, pieces, all);
    }

    /** One more piece is done; may be called by several threads. */
    synchronized void step() {
        done++;
        watch.at(stage, done, of);
    }

    /** A planner whose plans are counted. */
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
