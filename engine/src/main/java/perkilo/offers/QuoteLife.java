package perkilo.offers;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The state of a quote, as seen on a day. */
public sealed interface QuoteLife {

    /**
     * It counts on the day.
     *
     * @param days from the day on; the first of them contains it
     */
    record Holds(List<OrderDays> days) implements QuoteLife {

        public Holds {
            days = List.copyOf(days);
        }
    }

    /**
     * It counts from its own, later day on.
     *
     * @param before the quote of the pack that counts on the day, or else the newest; null if there is none
     */
    record Announced(List<OrderDays> days, @Nullable Offer before) implements QuoteLife {

        public Announced {
            days = List.copyOf(days);
        }
    }

    /** It ends before it begins, so it is never valid. */
    record Never() implements QuoteLife {}

    /**
     * It is the newest, and its last day has passed.
     *
     * @param again the older quote that counts again; null if there is none
     */
    record Expired(@Nullable Offer again) implements QuoteLife {}

    /**
     * A newer quote of the pack has followed it, and it does not count on the day.
     *
     * @param by the newer quote
     * @param byCounts whether that one counts on the day
     * @param days later days on which it counts again; usually none
     */
    record Superseded(Offer by, boolean byCounts, List<OrderDays> days) implements QuoteLife {

        public Superseded {
            days = List.copyOf(days);
        }
    }

    /**
     * A list that is not older names the pack without a price.
     *
     * @param by the row of that list
     * @param newest the newest quote with a price
     */
    record Withdrawn(Unpriced by, Offer newest) implements QuoteLife {}
}
