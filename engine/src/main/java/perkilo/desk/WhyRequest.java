package perkilo.desk;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import perkilo.orderplan.WhyThis;

/**
 * How much work goes into what else could have been done.
 *
 * @param steps the most steps of the search, which are the same on every machine; 0 to leave it out
 * @param time the longest time, if the clock is to end it instead; null for no clock
 */
public record WhyRequest(long steps, @Nullable Duration time) {

    /** The usual work. */
    public static final WhyRequest USUAL = times(1);

    /** A number of times the usual work; none for 0. */
    public static WhyRequest times(int times) {
        return new WhyRequest(WhyThis.Limits.USUAL_STEPS * Math.max(0, times), null);
    }

    /** As much as can be done in a time; nothing for no time. */
    public static WhyRequest within(Duration time) {
        return new WhyRequest(time.isNegative() || time.isZero() ? 0 : Long.MAX_VALUE, time);
    }

    /** Whether it is left out. */
    public boolean isNone() {
        return steps == 0;
    }
}
