package perkilo.decision;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A number of a book that a scenario can change.
 *
 * @param what it is called in a scenario
 * @param kind of number
 * @param value as it is today; null if it is several, or none
 * @param unit of the value, such as {@code EUR per kg}; empty if there is no value
 * @param byPercent whether only a change in per cent makes sense, and not a new value
 */
public record Changeable(String what, Kind kind, @Nullable BigDecimal value, String unit, boolean byPercent) {

    /** The kinds of numbers. */
    public enum Kind {
        UNITS,
        WAGE,
        PRICE,
        SUPPLIER,
        RATE,
        FREIGHT,
        FILL
    }
}
