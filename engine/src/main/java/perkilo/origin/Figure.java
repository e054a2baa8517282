package perkilo.origin;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A number that somebody typed, or what holds while nobody did, with the place where it stands.
 *
 * <p>Percentages are held as fractions: 0.025 for 2.5 %. {@code perCell} says how a spreadsheet formula gets from the
 * cell to the value: {@code value = cell × perCell}, so 0.01 for a cell that holds 2.5 and means 2.5 %.
 *
 * @param value exact, in the unit that the field's name says
 * @param origin the cell, or {@link Origin#NONE} for a default
 * @param perCell what a number in the cell is multiplied by; null where no formula can refer to the cell (it stands in
 *     another file, or there is none, or it is not known what a number there would mean)
 * @param held what the cell holds now
 */
public record Figure(
        BigDecimal value, Origin origin, @Nullable BigDecimal perCell, Held held) {

    /** What a cell can hold. */
    public enum Held {
        /** The number. */
        NUMBER,
        /** Words that say the number, or that there is none. */
        WORDS,
        /** Nothing; the value is what holds by default. */
        NOTHING
    }

    /** Nothing, by default. */
    public static final Figure ZERO = of(BigDecimal.ZERO);

    /** One, by default. */
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

    /** A figure that no file holds. */
    public static Figure of(BigDecimal value) {
        return new Figure(value, Origin.NONE, null);
    }

    /**
     * A figure that no file holds.
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

    /** What a cell's figure is, times a factor: a price for 100 g as that of a kilogram. */
    public Figure times(BigDecimal factor) {
        return factor.compareTo(BigDecimal.ONE) == 0
                ? this
                : new Figure(value.multiply(factor), origin, perCell == null ? null : perCell.multiply(factor), held);
    }

    /** The same place, another value: how a what-if keeps track of the cell that it stands for. */
    public Figure withValue(BigDecimal other) {
        return new Figure(other, origin, perCell, held);
    }

    /** The same figure, to which no formula refers. */
    public Figure asConstant() {
        return new Figure(value, origin, null, held);
    }
}
