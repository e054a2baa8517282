package perkilo.purchasing;

import java.time.Duration;

/** Limits of searches that count steps, so that a busy machine goes as far as a quiet one. */
public final class Steps {

    private Steps() {}

    /** A search that ends when it has asked so many times whether to go on. */
    public static SearchLimits most(int steps) {
        int[] taken = {0};
        return new SearchLimits(Duration.ofDays(1), () -> ++taken[0] > steps);
    }
}
