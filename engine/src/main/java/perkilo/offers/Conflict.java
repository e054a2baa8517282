package perkilo.offers;

import java.math.BigDecimal;

/**
 * A contradiction between two rows of one offer.
 *
 * @param <R> the rows
 */
public sealed interface Conflict<R> {

    /** The row that contradicts. */
    R row();

    /** The row that it contradicts. */
    R other();

    /** A field that must be the same in all rows of an offer. */
    enum Field {
        CURRENCY,
        MINIMUM_ORDER,
        ORDER_MULTIPLE,
        DUTY,
        VALID_UNTIL
    }

    /**
     * A row has another value than an earlier row.
     *
     * @param other the first row of the offer
     */
    record Differs<R>(Field field, R row, R other) implements Conflict<R> {}

    /** A row repeats a price for the same quantity. */
    record SamePrice<R>(R row, R other) implements Conflict<R> {}

    /** A row has another price from the same quantity. */
    record OtherPrice<R>(R row, R other) implements Conflict<R> {}

    /**
     * A unit costs more in a larger quantity than in a smaller one.
     *
     * @param from the larger quantity, in the pack's unit
     */
    record Dearer<R>(R row, R other, BigDecimal from) implements Conflict<R> {}
}
