package perkilo.orderplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.costing.Item;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.offers.OrderDays;
import perkilo.origin.Finding;

/** Errors and warnings about prices that change within a horizon. */
final class AnnouncedPrices {

    private final Market market;
    private final List<HorizonItem> items;
    private final Horizon horizon;
    private final List<Offer> byVolume;

    AnnouncedPrices(Market market, HorizonProblem basis) {
        this(market, basis.horizon(), basis.items());
    }

    AnnouncedPrices(Market market, Horizon horizon, List<HorizonItem> items) {
        this.market = market;
        this.items = items;
        this.horizon = horizon;
        this.byVolume = market.prices().orderableUntil(horizon.lastOrderDay()).stream()
                .filter(Offer::needsDensity)
                .filter(offer -> !market.prices().isOrderableOn(horizon.today(), offer))
                .toList();
    }

    /** An error for each announced offer by volume, if the item's density is unknown. */
    List<Finding> unmeasured(Item item) {
        Material material = item.material();
        String key = Names.key(item.name());
        return material == null || material.density() != null
                ? List.of()
                : byVolume.stream()
                        .filter(offer -> Names.key(offer.item()).equals(key))
                        .map(this::unmeasured)
                        .toList();
    }

    private Finding unmeasured(Offer offer) {
        return Finding.error(
                offer.packSize().origin(),
                OrderMessages.announcedNeedsDensity(
                        offer.item(), String.valueOf(OrderMonths.firstOrderDay(market.prices(), offer))));
    }

    /**
     * A warning for each price that ends before the next price of the same pack begins: no order is planned in between.
     */
    List<Finding> gaps() {
        List<Finding> gaps = new ArrayList<>();
        List<String> names = items.stream().map(HorizonItem::name).toList();
        for (Listing listing : market.listings(names)) {
            Offer offer = listing.offer();
            for (OrderDays days : market.prices().orderDays(offer)) {
                LocalDate last = days.last();
                if (days.leavesGap() && last != null && !last.isAfter(horizon.lastOrderDay())) {
                    gaps.add(Finding.warning(
                            offer.origin(),
                            OrderMessages.gapBetweenPrices(
                                    offer.supplier(), offer.item(), offer.pack(), last, String.valueOf(days.next()))));
                }
            }
        }
        return gaps;
    }
}
