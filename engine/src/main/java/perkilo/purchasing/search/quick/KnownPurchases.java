package perkilo.purchasing.search.quick;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;

/**
 * Purchases of a market that others can start from: most of their items are the same.
 *
 * <p>Only a purchase unlike all before is added. So where one purchase is planned before many that differ from it in
 * one item or two, all of these start from it, in whatever order and however many at once.
 */
final class KnownPurchases {

    /** The most purchases that are remembered; later ones are not. */
    private static final int MOST = 64;

    private final List<Known> all = new CopyOnWriteArrayList<>();

    /**
     * A purchase.
     *
     * @param picks by item
     * @param vendors who are bought from, one bit each
     */
    record Known(Map<ItemCovers, List<Cover.Pick>> picks, int vendors) {

        /** Whether no item differs: then there is nothing to start from that the search wouldn't come to anew. */
        boolean isAllOf(List<ItemCovers> items) {
            return inCommonWith(items) == items.size();
        }

        private int inCommonWith(List<ItemCovers> items) {
            int same = 0;
            for (ItemCovers item : items) {
                same += picks.containsKey(item) ? 1 : 0;
            }
            return same;
        }
    }

    /** The purchase that has most items in common with others, half of them or more; null if there is none. */
    @Nullable Known like(List<ItemCovers> items) {
        Known like = null;
        int most = (items.size() - 1) / 2;
        for (Known known : all) {
            int same = known.inCommonWith(items);
            if (same > most) {
                most = same;
                like = known;
            }
        }
        return like;
    }

    /**
     * Adds a purchase, unless one like it is known.
     *
     * @param picks by item
     */
    synchronized void add(List<ItemCovers> items, List<List<Cover.Pick>> picks) {
        if (all.size() >= MOST || like(items) != null) {
            return;
        }
        Map<ItemCovers, List<Cover.Pick>> byItem = new HashMap<>();
        int vendors = 0;
        for (int i = 0; i < items.size(); i++) {
            byItem.put(items.get(i), picks.get(i));
            for (Cover.Pick pick : picks.get(i)) {
                vendors |= 1 << pick.price().vendor();
            }
        }
        all.add(new Known(byItem, vendors));
    }
}
