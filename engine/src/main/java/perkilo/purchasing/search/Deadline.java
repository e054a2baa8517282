package perkilo.purchasing.search;

import perkilo.purchasing.SearchLimits;

/**
 * The time when the search must stop. Time only ends the search; no decision of the search depends on it, so that every
 * machine makes the same steps and finds the same plan.
 */
final class Deadline {
    private final SearchLimits limits;
    private final long start = System.nanoTime();
    private boolean over;

    Deadline(SearchLimits limits) {
        this.limits = limits;
    }

    boolean over() {
        if (!over) {
            over = System.nanoTime() - start >= limits.time().toNanos()
                    || limits.cancelled().getAsBoolean();
        }
        return over;
    }
}
