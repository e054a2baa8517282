package perkilo.orderplan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import perkilo.costing.Listing;
import perkilo.offers.Announced;
import perkilo.offers.Offer;

/**
 * The months that an offer can be ordered for.
 *
 * <p>What counts is the day that the order is placed on: not before the costing date, not before the day of the quote,
 * and not after the last day on which an order can be placed at this price. Usually that is the supplier's lead time
 * before the month begins; where the price has gone by then, the order is placed on its last day, and serves the first
 * month that begins when the goods can be there. A price that ends without another to follow is planned with beyond its
 * end.
 *
 * @param first the first period
 * @param last the last period; before the first where there is none
 * @param heldUntil the last period whose order is placed before the offer ends; −1 where it ends before the first
 */
record OrderMonths(int first, int last, int heldUntil) {

    /** The months of an offer. */
    static OrderMonths of(Horizon horizon, Listing listing, Announced announced) {
        int lead = HorizonProblem.leadDays(listing.supplier());
        int first = horizon.firstPeriodFrom(arrival(horizon, listing));
        Optional<LocalDate> lastDay = announced.lastOrderDay(listing.offer());
        if (lastDay.isPresent()) {
            int last = horizon.firstPeriodFrom(lastDay.orElseThrow().plusDays(lead));
            int within = Math.min(last, horizon.periods() - 1);
            return new OrderMonths(first, within, within);
        }
        LocalDate end = listing.offer().validUntil();
        return new OrderMonths(
                first, horizon.periods() - 1, lastPeriod(horizon, lead, end == null ? LocalDate.MAX : end));
    }

    /** The last day to place an order of several offers for a period, so that each of their prices holds. */
    static LocalDate orderBy(Horizon horizon, int period, List<Listing> listings, Announced announced) {
        return listings.stream()
                .flatMap(listing -> Stream.concat(
                        Stream.of(horizon.orderDay(period, HorizonProblem.leadDays(listing.supplier()))),
                        announced.lastOrderDay(listing.offer()).stream()))
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** The last period whose order is placed on a day or before it. */
    private static int lastPeriod(Horizon horizon, int leadDays, LocalDate day) {
        int period = horizon.periods() - 1;
        while (period >= 0 && horizon.orderDay(period, leadDays).isAfter(day)) {
            period--;
        }
        return period;
    }

    /** The first day that an order can be placed on at an offer's price. */
    static LocalDate firstOrderDay(Horizon horizon, Offer offer) {
        LocalDate quoted = offer.quotedOn();
        return quoted != null && offer.isAnnouncedOn(horizon.today()) ? quoted : horizon.today();
    }

    /** The first day that goods at an offer's price can be there. */
    static LocalDate arrival(Horizon horizon, Listing listing) {
        return firstOrderDay(horizon, listing.offer()).plusDays(HorizonProblem.leadDays(listing.supplier()));
    }

    /** Whether it cannot be ordered for any month. */
    boolean isEmpty() {
        return last < first;
    }
}
