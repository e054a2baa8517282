package perkilo.orderplan;

import java.time.LocalDate;
import java.util.List;
import perkilo.costing.Listing;
import perkilo.offers.Offer;
import perkilo.offers.OfferHistory;
import perkilo.offers.OrderDays;

/**
 * The months for which an offer can be ordered.
 *
 * <p>The day of the order decides: not before the costing date, not before the day of the quote, and not after the last
 * day on which an order can be placed at this price. Usually the day is the supplier's lead time before the month
 * begins; if the price has ended by then, the order is placed on the last day of the price, for the first month that
 * begins when the goods can be there. A price that ends without a next price is used beyond its end.
 *
 * @param first the first period
 * @param last the last period; before the first if there is none
 * @param heldUntil the last period whose order is placed before the offer ends; −1 if it ends before the first
 */
record OrderMonths(int first, int last, int heldUntil) {

    /** The months of an offer that is valid for orders on the costing date or later. */
    static OrderMonths of(Horizon horizon, Listing listing, OrderDays days) {
        int lead = HorizonProblem.leadDays(listing.supplier());
        int first = horizon.firstPeriodFrom(days.first().plusDays(lead));
        LocalDate end = days.last() == null ? LocalDate.MAX : days.last();
        if (days.next() != null) {
            int last = horizon.firstPeriodFrom(end.plusDays(lead));
            int within = Math.min(last, horizon.periods() - 1);
            return new OrderMonths(first, within, within);
        }
        return new OrderMonths(first, horizon.periods() - 1, lastPeriod(horizon, lead, end));
    }

    /**
     * The last day to place an order of several offers, so that each of their prices is valid.
     *
     * @param usual the supplier's lead time before the goods are needed
     * @param prices the days of each offer
     */
    static LocalDate orderBy(LocalDate usual, List<OrderDays> prices) {
        LocalDate earliest = usual;
        for (OrderDays days : prices) {
            LocalDate last = days.next() == null ? null : days.last();
            earliest = last != null && last.isBefore(earliest) ? last : earliest;
        }
        return earliest;
    }

    /** The last period whose order is placed on a day or before it. */
    private static int lastPeriod(Horizon horizon, int leadDays, LocalDate day) {
        int period = horizon.periods() - 1;
        while (period >= 0 && horizon.orderDay(period, leadDays).isAfter(day)) {
            period--;
        }
        return period;
    }

    /** The first day on which an order can be placed at the price of an offer of the market. */
    static LocalDate firstOrderDay(OfferHistory prices, Offer offer) {
        return prices.orderDays(offer).get(0).first();
    }

    /** The first day on which goods at the price of an offer of the market can arrive. */
    static LocalDate arrival(OfferHistory prices, Listing listing) {
        return firstOrderDay(prices, listing.offer()).plusDays(HorizonProblem.leadDays(listing.supplier()));
    }

    /** Whether it cannot be ordered for any month. */
    boolean isEmpty() {
        return last < first;
    }
}
