package perkilo.desk;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * How much work goes into what else could have been done.
 *
 * @param times how many times the usual work, which is the same on every machine; 0 to leave it out
 * @param time the longest time, if the clock is to end it instead; null for no clock
 */
public record WhyRequest(int times, @Nullable Duration time) {

    /** The usual work. */
    public static final WhyRequest USUAL = times(1);

    /** A number of times the usual work; none for 0. */
    public static WhyRequest times(int times) {
        return new WhyRequest(Math.max(0, times), null);
    }

    /** As much as can be done in a time; nothing for no time. */
    public static WhyRequest within(Duration time) {
        return new WhyRequest(time.isNegative() || time.isZero() ? 0 : 1, time);
    }

    /** Whether it is left out. */
    public boolean isNone() {
        return times == 0;
    }
}
