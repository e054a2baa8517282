package perkilo.purchasing.search;

import perkilo.purchasing.SearchLimits;

/**
 * Tells when to stop. It only ever ends the search: nothing that the search decides on its way depends on the time, so
 * that every machine walks the same way and finds the same plan.
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
