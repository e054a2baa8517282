package perkilo.ordering.sets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Vendor;

/** Looks at all sets of vendors that may get an order, the least possible cost first. */
final class VendorSets {

    /** After so many sets the best found is taken; the next set's least possible cost is the bound. */
    private static final int MOST_SETS = 256;

    private final List<Vendor> vendors;
    private final List<ItemCovers> items;
    private final MinimumOrders orders;

    VendorSets(List<Vendor> vendors, List<ItemCovers> items) {
        this.vendors = vendors;
        this.items = items;
        this.orders = new MinimumOrders(vendors, items);
    }

    /**
     * What was found.
     *
     * @param picks null where nothing was
     * @param bound no purchase costs less
     */
    record Answer(@Nullable List<Cover.Pick> picks, double bound) {}

    private record Open(int set, double least) {}

    Answer search() {
        List<Open> sets = byLeastCost();
        sets.stream().limit(MOST_SETS).forEach(open -> orders.tryOut(open.set()));
        int looked = 0;
        double next = Double.POSITIVE_INFINITY;
        for (Open open : sets) {
            if (open.least() >= orders.bestCost() - 1e-9) {
                break;
            }
            if (looked++ == MOST_SETS) {
                next = open.least();
                break;
            }
            orders.lookInto(open.set());
        }
        return new Answer(orders.best(), Math.min(next, Math.min(orders.unsettled(), orders.bestCost())));
    }

    /** Every set of vendors from which all items can be had, by the least that a purchase from it can cost. */
    private List<Open> byLeastCost() {
        int sellers = 0;
        for (ItemCovers item : items) {
            sellers |= item.sellers();
        }
        List<Open> sets = new ArrayList<>();
        for (int set = sellers; set > 0; set = (set - 1) & sellers) {
            double least = least(set);
            if (least < Double.POSITIVE_INFINITY) {
                sets.add(new Open(set, least));
            }
        }
        sets.sort(Comparator.comparingDouble(Open::least).thenComparingInt(Open::set));
        return sets;
    }

    private double least(int set) {
        double cost = 0;
        for (int vendor = 0; vendor < vendors.size(); vendor++) {
            cost += (set >> vendor & 1) == 1 ? orders.opening(vendor) : 0;
        }
        for (ItemCovers item : items) {
            Cover cover = item.from(set);
            if (cover == null) {
                return Double.POSITIVE_INFINITY;
            }
            cost += cover.bound();
        }
        return cost;
    }
}
