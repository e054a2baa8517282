package perkilo.purchasing.search;

import org.jspecify.annotations.Nullable;

/** The best plan so far. */
final class Incumbent {
    /** The least difference that makes a plan better; smaller ones are rounding noise. */
    private static final double BETTER = 1e-9;

    private @Nullable JointPlan best;
    private final double ceiling;
    private double total = Double.POSITIVE_INFINITY;

    /**
     * No plan yet.
     *
     * @param ceiling no possible plan can cost more than this
     */
    Incumbent(double ceiling) {
        this.ceiling = ceiling;
    }

    double ceiling() {
        return ceiling;
    }

    /** Takes the plan if it is possible and better. */
    boolean offer(JointPlan plan) {
        if (plan.total() < total - BETTER && plan.possible()) {
            best = plan;
            total = plan.total();
            return true;
        }
        return false;
    }

    double total() {
        return total;
    }

    @Nullable JointPlan best() {
        return best;
    }
}
