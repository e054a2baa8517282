package perkilo.orderplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Item;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.offers.OrderDays;

/** The offers of one item, and the days on which goods can be there. */
final class ItemOffers {

    private final WorkDays workDays;
    private final LocalDate today;
    private final @Nullable ShelfLife life;
    private final List<Priced> prices = new ArrayList<>();

    /** A price on the days on which an order can be placed at it. */
    private record Priced(Listing listing, OrderDays days) {

        int lead() {
            return HorizonProblem.leadDays(listing.supplier());
        }
    }

    /**
     * The fastest delivery.
     *
     * @param listing the offer
     * @param ordered the day of the order
     * @param arrival the day of arrival
     * @param announced whether its price counts only from a day after the costing date on
     */
    record Fastest(Listing listing, LocalDate ordered, LocalDate arrival, boolean announced) {}

    ItemOffers(Market market, WorkDays workDays, Item item) {
        this.workDays = workDays;
        this.today = market.book().settings().costingDate();
        this.life = ShelfLife.of(item);
        for (Listing listing : market.listings(item.name())) {
            for (OrderDays days : market.prices().orderDays(listing.offer())) {
                if (!isOver(days, firstOrder(days))) {
                    prices.add(new Priced(listing, days));
                }
            }
        }
    }

    /** Whether a price has ended by a day. A price that ends without a next one goes on. */
    static boolean isOver(OrderDays days, LocalDate day) {
        LocalDate last = days.last();
        return days.next() != null && last != null && day.isAfter(last);
    }

    private LocalDate firstOrder(OrderDays days) {
        return workDays.onOrAfter(days.first().isBefore(today) ? today : days.first());
    }

    /** Whether nobody sells it. */
    boolean isEmpty() {
        return prices.isEmpty();
    }

    /** The delivery that is there first; empty if nobody sells it. */
    Optional<Fastest> fastest() {
        return prices.stream()
                .map(price -> {
                    LocalDate ordered = firstOrder(price.days());
                    boolean announced = price.days().first().isAfter(today);
                    return new Fastest(price.listing(), ordered, ordered.plusDays(price.lead()), announced);
                })
                .min(Comparator.comparing(Fastest::arrival));
    }

    /** The first day, from a day on, on which goods can be there and good that are ordered now or later. */
    @Nullable LocalDate firstDayFrom(LocalDate day) {
        if (prices.isEmpty()) {
            return null;
        }
        LocalDate latest = prices.stream()
                .map(price -> firstOrder(price.days()).plusDays(price.lead()))
                .max(Comparator.naturalOrder())
                .orElseThrow();
        LocalDate last = (latest.isAfter(day) ? latest : day).plusMonths(1);
        for (LocalDate at = day; !at.isAfter(last); at = at.plusDays(1)) {
            if (canBeThere(at)) {
                return at;
            }
        }
        return null;
    }

    /** The days on which goods may arrive that are bought for some days, or ordered on the last day of a price. */
    Set<LocalDate> arrivals(Collection<LocalDate> wanted) {
        Set<LocalDate> arrivals = new TreeSet<>();
        for (Priced price : prices) {
            for (LocalDate day : wanted) {
                arrivals.add(workDays.onOrBefore(day.minusDays(price.lead())).plusDays(price.lead()));
            }
            LocalDate last = price.days().last();
            if (last != null) {
                arrivals.add(workDays.onOrBefore(last).plusDays(price.lead()));
            }
        }
        return arrivals;
    }

    /** Whether goods can be there and good on a day. */
    boolean canBeThere(LocalDate day) {
        return prices.stream().anyMatch(price -> canBeThere(price, day));
    }

    private boolean canBeThere(Priced price, LocalDate day) {
        LocalDate latest = day.minusDays(price.lead());
        LocalDate last = price.days().next() == null ? null : price.days().last();
        LocalDate order = workDays.onOrBefore(last != null && last.isBefore(latest) ? last : latest);
        boolean priced = !order.isBefore(today) && !order.isBefore(price.days().first());
        return priced
                && (life == null || !life.lastDay(order.plusDays(price.lead())).isBefore(day));
    }
}
