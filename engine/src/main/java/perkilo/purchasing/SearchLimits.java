package perkilo.purchasing;

import java.time.Duration;
import java.util.function.BooleanSupplier;

/**
 * The limits at which a search stops early.
 *
 * @param time the longest time it may take
 * @param cancelled asked now and then; true ends the search
 */
public record SearchLimits(Duration time, BooleanSupplier cancelled) {

    /** The usual limit: one minute. */
    public static SearchLimits usual() {
        return within(Duration.ofMinutes(1));
    }

    /**
     * The same, for a search that may be stopped.
     *
     * @param cancelled asked now and then; true ends the search
     */
    public static SearchLimits usual(BooleanSupplier cancelled) {
        return new SearchLimits(Duration.ofMinutes(1), cancelled);
    }

    /** A search that ends after {@code time}. */
    public static SearchLimits within(Duration time) {
        return new SearchLimits(time, () -> false);
    }
}
