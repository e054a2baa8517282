package perkilo.swaps.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Vendor;

/**
 * A purchase whose orders may be below their vendors' minimum order values, and what can be done about it: items move
 * to the vendor who lacks goods, or a pack more is bought there, whichever costs least for the goods it brings.
 */
final class MinimumOrders {

    private final List<Vendor> vendors;
    private final double[] minimum;
    private final List<ItemCovers> items;
    private final List<Cover> chosen;
    private final List<Cover.Pick> padding = new ArrayList<>();

    /**
     * A purchase.
     *
     * @param chosen one cover per item
     */
    MinimumOrders(List<Vendor> vendors, List<ItemCovers> items, List<Cover> chosen) {
        this.vendors = vendors;
        this.minimum = vendors.stream()
                .mapToDouble(vendor -> vendor.minimumOrderValue().doubleValue())
                .toArray();
        this.items = items;
        this.chosen = new ArrayList<>(chosen);
    }

    /** Whether every order meets its vendor's minimum order value. */
    boolean areMet() {
        for (int vendor = 0; vendor < vendors.size(); vendor++) {
            if (isShort(vendor)) {
                return false;
            }
        }
        return true;
    }

    /** Whether every cover is proven cheapest. */
    boolean isExact() {
        return chosen.stream().allMatch(cover -> cover.cost() - cover.bound() < 1e-6);
    }

    /** Everything that is bought; packs of one quote together. */
    List<Cover.Pick> picks() {
        List<Cover.Pick> all = new ArrayList<>();
        chosen.forEach(cover -> cover.picks().forEach(pick -> add(all, pick)));
        padding.forEach(pick -> add(all, pick));
        return all;
    }

    /** What the purchase costs with orders opened and small-order charges paid. */
    double cost(double[] opening) {
        double cost = 0;
        for (Cover.Pick pick : picks()) {
            cost += pick.price().cost(pick.packs());
        }
        for (int vendor = 0; vendor < vendors.size(); vendor++) {
            if (goods(vendor) > 0 || isUsed(vendor)) {
                cost += opening[vendor];
                cost += isShort(vendor) ? vendors.get(vendor).smallOrderCost().doubleValue() : 0;
            }
        }
        return cost;
    }

    /** Makes the purchase possible; false where that does not succeed. */
    boolean repair(int open) {
        for (int vendor = 0; vendor < vendors.size(); vendor++) {
            boolean pays = !vendors.get(vendor).refusesSmallOrders();
            for (int step = 0; step < 2 * items.size() && isShort(vendor); step++) {
                double allowed = pays ? vendors.get(vendor).smallOrderCost().doubleValue() : Double.POSITIVE_INFINITY;
                if (!bringGoods(vendor, open, allowed)) {
                    break;
                }
            }
            if (isShort(vendor) && !pays) {
                return false;
            }
        }
        return true;
    }

    /** Moves an item to a vendor or buys a pack more of one there; false where nothing is worth it. */
    private boolean bringGoods(int vendor, int open, double allowed) {
        double lacking = minimum[vendor] - goods(vendor);
        int movedItem = -1;
        Cover moved = null;
        Cover.Pick padded = null;
        double bestRate = Double.POSITIVE_INFINITY;
        for (int item = 0; item < items.size(); item++) {
            Cover now = chosen.get(item);
            Cover there = items.get(item).from(open & 1 << vendor);
            if (there != null && now.vendors() != 1 << vendor && !breaksAnother(now, vendor)) {
                double gained = Math.min(lacking, goodsOf(there, vendor) - goodsOf(now, vendor));
                double rate = gained <= 0 ? Double.POSITIVE_INFINITY : (there.cost() - now.cost()) / gained;
                if (rate < bestRate) {
                    bestRate = rate;
                    movedItem = item;
                    moved = there;
                    padded = null;
                }
            }
            for (Cover.Pick pick : now.picks()) {
                double rate = pick.price().quote().vendor() == vendor ? paddingRate(pick, lacking) : bestRate;
                if (rate < bestRate) {
                    bestRate = rate;
                    padded = new Cover.Pick(pick.price(), pick.price().quote().multiple());
                    moved = null;
                }
            }
        }
        return bestRate * lacking < allowed && carryOut(movedItem, moved, padded);
    }

    private boolean carryOut(int item, @Nullable Cover moved, Cover.@Nullable Pick padded) {
        if (moved != null) {
            chosen.set(item, moved);
            return true;
        }
        return padded != null && padding.add(padded);
    }

    private double paddingRate(Cover.Pick pick, double lacking) {
        long more = pick.price().quote().multiple();
        long now = packs(pick.price());
        double gained =
                Math.min(lacking, pick.price().goods(now + more) - pick.price().goods(now));
        double extra = pick.price().cost(now + more) - pick.price().cost(now);
        return gained <= 0 ? Double.POSITIVE_INFINITY : extra / gained;
    }

    private long packs(PackPrice price) {
        return picks().stream()
                .filter(pick -> pick.price() == price)
                .mapToLong(Cover.Pick::packs)
                .sum();
    }

    /** Whether taking a cover away would leave another vendor's order below its minimum. */
    private boolean breaksAnother(Cover now, int except) {
        for (int vendor = 0; vendor < vendors.size(); vendor++) {
            double left = goods(vendor) - goodsOf(now, vendor);
            if (vendor != except && (now.vendors() >> vendor & 1) == 1 && left > 0 && left < minimum[vendor]) {
                return true;
            }
        }
        return false;
    }

    private boolean isShort(int vendor) {
        return minimum[vendor] > 0 && isUsed(vendor) && goods(vendor) < minimum[vendor] - 1e-9;
    }

    private boolean isUsed(int vendor) {
        return chosen.stream().anyMatch(cover -> (cover.vendors() >> vendor & 1) == 1);
    }

    private double goods(int vendor) {
        double goods = 0;
        for (Cover.Pick pick : picks()) {
            goods += pick.price().quote().vendor() == vendor ? pick.price().goods(pick.packs()) : 0;
        }
        return goods;
    }

    private static double goodsOf(Cover cover, int vendor) {
        double goods = 0;
        for (Cover.Pick pick : cover.picks()) {
            goods += pick.price().quote().vendor() == vendor ? pick.price().goods(pick.packs()) : 0;
        }
        return goods;
    }

    private static void add(List<Cover.Pick> all, Cover.Pick pick) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).price() == pick.price()) {
                all.set(i, new Cover.Pick(pick.price(), all.get(i).packs() + pick.packs()));
                return;
            }
        }
        all.add(pick);
    }
}
