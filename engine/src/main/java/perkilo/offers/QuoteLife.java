package perkilo.offers;

import org.jspecify.annotations.Nullable;

/** The state of a quote, as seen on a day. */
public sealed interface QuoteLife {

    /** It is valid on the day. */
    record Holds(OrderDays days) implements QuoteLife {}

    /**
     * It is valid from a later day on.
     *
     * @param before the newest quote of the pack until then; null if there is none
     */
    record Announced(OrderDays days, @Nullable Offer before) implements QuoteLife {}

    /** It is announced, but ends before it begins, so it is never valid. */
    record Never() implements QuoteLife {}

    /** It is the newest, and its last day has passed. */
    record Expired() implements QuoteLife {}

    /**
     * A newer quote of the pack replaces it, even if that one has expired.
     *
     * @param by the newer quote
     */
    record Superseded(Offer by) implements QuoteLife {}

    /**
     * A list that is not older names the pack without a price.
     *
     * @param by the row of that list
     * @param newest the newest quote with a price
     */
    record Withdrawn(Unpriced by, Offer newest) implements QuoteLife {}
}
