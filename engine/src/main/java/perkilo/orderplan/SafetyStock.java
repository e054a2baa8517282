package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Item;
import perkilo.costing.Market;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.purchasing.Need;

/**
 * The stock of an item that is to be there at all times: from the first day on which an order can be there to the end
 * of the plan. Before that day nothing can be bought for it.
 */
final class SafetyStock {

    private final Market market;
    private final WorkDays workDays;
    private final Set<String> without;

    /**
     * The safety stock of a book's items.
     *
     * @param without the keys of items that have none
     */
    SafetyStock(Market market, WorkDays workDays, Set<String> without) {
        this.market = market;
        this.workDays = workDays;
        this.without = without;
    }

    /** What a book says of an item: of a component, the most that a row says; null for none. */
    static @Nullable Figure stated(Book book, Item item) {
        Material material = item.material();
        if (material != null) {
            return material.safetyStock();
        }
        Figure most = null;
        for (Product product : book.products().values()) {
            for (Product.Component component : product.components()) {
                Figure stated = component.safetyStock();
                boolean same = Names.key(component.name()).equals(item.key());
                most = same && stated != null && (most == null || stated.value().compareTo(most.value()) > 0)
                        ? stated
                        : most;
            }
        }
        return most;
    }

    private BigDecimal quantity(Wanted wanted) {
        Figure stated = stated(market.book(), wanted.item());
        return stated == null || without.contains(wanted.item().key()) ? BigDecimal.ZERO : stated.value();
    }

    /** The first day on which an order can be there; empty if there is no safety stock, or nobody sells the item. */
    private Optional<LocalDate> from(Wanted wanted) {
        return quantity(wanted).signum() == 0
                ? Optional.empty()
                : new ItemOffers(market, workDays, wanted.item()).fastest().map(ItemOffers.Fastest::arrival);
    }

    /** The safety stock for the planner. */
    Need.Safety of(Horizon horizon, Wanted wanted) {
        return from(wanted)
                .filter(day -> !day.isAfter(horizon.end()))
                .map(day -> new Need.Safety(quantity(wanted), horizon.periodFrom(day)))
                .orElse(Need.Safety.NONE);
    }

    /** The days after those on which goods expire that are bought for some days, before the last of these. */
    Set<LocalDate> daysAfterExpiry(Wanted wanted, SortedSet<LocalDate> bought) {
        TreeSet<LocalDate> days = new TreeSet<>();
        ShelfLife life = ShelfLife.of(wanted.item());
        LocalDate first = from(wanted).orElse(null);
        if (life == null || first == null || life.lastDay(first).isAfter(bought.last())) {
            return days;
        }
        for (LocalDate arrival : new ItemOffers(market, workDays, wanted.item()).arrivals(bought)) {
            LocalDate after = life.lastDay(arrival).plusDays(1);
            if (!after.isAfter(bought.last())) {
                days.add(after);
            }
        }
        return days;
    }

    /** The days on which stock may have to be filled up: the first, and each day after stock expires. */
    Set<LocalDate> days(Wanted wanted, LocalDate end) {
        TreeSet<LocalDate> days = new TreeSet<>();
        LocalDate first = from(wanted).orElse(null);
        if (first == null || first.isAfter(end)) {
            return days;
        }
        days.add(first);
        for (StockOnHand lot : wanted.stock()) {
            LocalDate last = lot.lastDay();
            if (last != null && !last.isBefore(first) && last.isBefore(end)) {
                days.add(last.plusDays(1));
            }
        }
        return days;
    }
}
