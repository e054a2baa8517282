package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A purchase from vendors who charge nothing for an order as a whole and take orders of any value: it falls apart into
 * its items, and the cheapest covers of the items together are the cheapest purchase.
 */
final class ItemByItem {

    private ItemByItem() {}

    /** Whether a purchase of these items falls apart. */
    static boolean fits(List<AskedItem> items) {
        for (AskedItem item : items) {
            if (!item.prices().isFreeOfOrderCharges()) {
                return false;
            }
        }
        return true;
    }

    /**
     * The cheapest purchase.
     *
     * @return without picks where an item has no price
     */
    static VendorSets.Answer cheapest(MarketPrices market, List<AskedItem> items) {
        List<List<Cover.Pick>> picks = new ArrayList<>(items.size());
        double bound = 0;
        for (AskedItem item : items) {
            Cover cover = cover(market, item);
            if (cover == null) {
                return new VendorSets.Answer(null, Double.NEGATIVE_INFINITY);
            }
            picks.add(cover.picks());
            bound += cover.bound();
        }
        return new VendorSets.Answer(picks, bound);
    }

    /** A single quote is asked at once: that is quicker than looking up what it said before. */
    private static @Nullable Cover cover(MarketPrices market, AskedItem item) {
        ItemPrices.Offered all = item.prices().all();
        return all.count() > 1
                ? market.cheapest(item.prices(), item.wanted()).orElse(null)
                : Covering.cheapest(all, item.wanted());
    }
}
