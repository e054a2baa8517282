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
    private final List<String> items;
    private final LocalDate lastDay;
    private final List<Offer> byVolume;

    AnnouncedPrices(Market market, HorizonProblem basis) {
        this(
                market,
                basis.horizon().end(),
                basis.items().stream().map(HorizonItem::name).toList());
    }

    /**
     * The prices of some items.
     *
     * @param lastDay the last on which an order may be placed
     * @param items their names
     */
    AnnouncedPrices(Market market, LocalDate lastDay, List<String> items) {
        LocalDate today = market.book().settings().costingDate();
        this.market = market;
        this.items = items;
        this.lastDay = lastDay;
        this.byVolume = market.prices().orderableUntil(lastDay).stream()
                .filter(Offer::needsDensity)
                .filter(offer -> !market.prices().isOrderableOn(today, offer))
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
                        offer.item(),
                        String.valueOf(market.prices().orderDays(offer).get(0).first())));
    }

    /**
     * A warning for each price that ends before the next price of the same pack begins: no order is planned in between.
     */
    List<Finding> gaps() {
        List<Finding> gaps = new ArrayList<>();
        for (Listing listing : market.listings(items)) {
            Offer offer = listing.offer();
            for (OrderDays days : market.prices().orderDays(offer)) {
                LocalDate last = days.last();
                if (days.leavesGap() && last != null && !last.isAfter(lastDay)) {
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
