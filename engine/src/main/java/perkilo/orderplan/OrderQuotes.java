package perkilo.orderplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.offers.OrderDays;
import perkilo.purchasing.Deliveries;
import perkilo.purchasing.Quote;

/** The quotes of a purchase problem: each price of an offer, with the days on which it can be ordered at. */
final class OrderQuotes {

    private final Market market;
    private final Horizon horizon;
    private final List<OrderSlots> slots;
    private final List<Quote> quotes = new ArrayList<>();
    private final List<Listing> listings = new ArrayList<>();
    private final List<OrderDays> days = new ArrayList<>();

    OrderQuotes(Market market, Horizon horizon, List<OrderSlots> slots) {
        this.market = market;
        this.horizon = horizon;
        this.slots = slots;
    }

    /** Adds the quotes for an item. */
    void add(int index, HorizonItem item) {
        for (Listing listing : market.listings(item.name())) {
            for (OrderDays price : market.prices().orderDays(listing.offer())) {
                for (int vendor = 0; vendor < slots.size(); vendor++) {
                    if (slots.get(vendor).supplier() == listing.vendor()) {
                        add(index, item, listing, price, vendor);
                    }
                }
            }
        }
    }

    private void add(int index, HorizonItem item, Listing listing, OrderDays price, int vendor) {
        OrderSlots slot = slots.get(vendor);
        List<Integer> early = new ArrayList<>();
        List<Integer> last = new ArrayList<>();
        int firstPeriod = -1;
        int lastPeriod = -1;
        int heldUntil = -1;
        for (int period = 0; period < horizon.periods(); period++) {
            LocalDate day = slot.days().get(period);
            LocalDate arrival = slot.arrival(period);
            int lastUse = arrival == null ? -1 : horizon.lastUse(item.lastDay(arrival));
            if (day == null || arrival == null || !counts(price, day) || lastUse < period) {
                early.add(Deliveries.NEVER);
                last.add(-1);
                continue;
            }
            early.add(Horizon.daysBetween(arrival, horizon.day(period)));
            last.add(lastUse);
            firstPeriod = firstPeriod < 0 ? period : firstPeriod;
            lastPeriod = period;
            heldUntil = isHeld(price.last(), day) ? period : heldUntil;
        }
        if (firstPeriod >= 0) {
            quotes.add(listing.quote(index, firstPeriod, lastPeriod)
                    .heldUntil(heldUntil)
                    .delivered(vendor, new Deliveries(early, last)));
            listings.add(listing);
            days.add(price);
        }
    }

    private static boolean counts(OrderDays price, LocalDate day) {
        return !day.isBefore(price.first()) && !ItemOffers.isOver(price, day);
    }

    private static boolean isHeld(@Nullable LocalDate last, LocalDate day) {
        return last == null || !day.isAfter(last);
    }

    /** The quotes. */
    List<Quote> quotes() {
        return quotes;
    }

    /** By quote: its offer. */
    List<Listing> listings() {
        return listings;
    }

    /** By quote: the days on which an order can be placed at it. */
    List<OrderDays> days() {
        return days;
    }
}
