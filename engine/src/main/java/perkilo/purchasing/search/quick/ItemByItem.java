package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A purchase from vendors who take orders of any value and have no charge for an order as a whole. It can be planned
 * item by item: the cheapest covers of the items together are the cheapest purchase.
 */
final class ItemByItem {

    private ItemByItem() {}

    /** Whether these items can be planned one by one. */
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
     * @return without picks if an item has no price
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

    /** The cheapest cover. With a single quote it is computed: that is quicker than looking it up. */
    private static @Nullable Cover cover(MarketPrices market, AskedItem item) {
        ItemPrices.Offered all = item.prices().all();
        return all.count() > 1
                ? market.cheapest(item.prices(), item.wanted()).orElse(null)
                : Covering.cheapest(all, item.wanted());
    }
}
