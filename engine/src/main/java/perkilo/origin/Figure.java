package perkilo.origin;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A number that a person typed, or the default if there is none, with its place.
 *
 * <p>Percentages are held as fractions: 0.025 for 2.5 %. {@code perCell} converts a cell to the value in a spreadsheet
 * formula: {@code value = cell × perCell}, so 0.01 for a cell that holds 2.5 and means 2.5 %.
 *
 * @param value exact, in the unit that the field's name says
 * @param origin the cell, or {@link Origin#NONE} for a default
 * @param perCell the factor for a number in the cell; null if no formula can refer to the cell (it is in another file,
 *     or there is none, or the meaning of a number there is unknown)
 * @param held what the cell currently holds
 */
public record Figure(
        BigDecimal value, Origin origin, @Nullable BigDecimal perCell, Held held) {

    /** What a cell can hold. */
    public enum Held {
        /** The number. */
        NUMBER,
        /** Words that state the number, or that there is none. */
        WORDS,
        /** Nothing; the value is the default. */
        NOTHING
    }

    /** Zero, as a default. */
    public static final Figure ZERO = of(BigDecimal.ZERO);

    /** One, as a default. */
    public static final Figure ONE = of(BigDecimal.ONE);

    public Figure {
        requireNonNull(value, "value");
        requireNonNull(origin, "origin");
        requireNonNull(held, "held");
    }

    /** A figure whose cell holds the number. */
    public Figure(BigDecimal value, Origin origin, @Nullable BigDecimal perCell) {
        this(value, origin, perCell, Held.NUMBER);
    }

    /** A figure that is in no file. */
    public static Figure of(BigDecimal value) {
        return new Figure(value, Origin.NONE, null);
    }

    /**
     * A figure that is in no file.
     *
     * @param decimal such as {@code "12.50"}
     * @throws NumberFormatException if the text is not a decimal number
     */
    public static Figure of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    /** Whether the value is zero. */
    public boolean isZero() {
        return value.signum() == 0;
    }

    /** The figure times a factor, such as a price for 100 g converted to a price for a kilogram. */
    public Figure times(BigDecimal factor) {
        return factor.compareTo(BigDecimal.ONE) == 0
                ? this
                : new Figure(value.multiply(factor), origin, perCell == null ? null : perCell.multiply(factor), held);
    }

    /** The same place with another value; a what-if keeps track of its cell in this way. */
    public Figure withValue(BigDecimal other) {
        return new Figure(other, origin, perCell, held);
    }

    /** The same figure, but no formula can refer to it. */
    public Figure asConstant() {
        return new Figure(value, origin, null, held);
    }
}
