package perkilo.offers;

import java.math.BigDecimal;

/**
 * What does not fit together in the rows of one offer.
 *
 * @param <R> the rows
 */
public sealed interface Conflict<R> {

    /** The row that does not fit. */
    R row();

    /** The row that it does not fit to. */
    R other();

    /** What all rows of an offer have to say alike. */
    enum Field {
        CURRENCY,
        MINIMUM_ORDER,
        ORDER_MULTIPLE,
        DUTY,
        VALID_UNTIL
    }

    /**
     * A row says something else than an earlier one.
     *
     * @param other the first row of the offer
     */
    record Differs<R>(Field field, R row, R other) implements Conflict<R> {}

    /** A row says the same price from the same quantity once more. */
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
