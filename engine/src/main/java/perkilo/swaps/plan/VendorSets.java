package perkilo.swaps.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Vendor;

/** Looks at all sets of vendors that may get an order, the least possible cost first. */
final class VendorSets {

    /** After so many sets the best found is taken; the next set's least possible cost is the bound. */
    private static final int MOST_SETS = 48;

    private final List<Vendor> vendors;
    private final List<ItemCovers> items;
    private final double[] opening;
    private @Nullable List<Cover.Pick> best;
    private double bestCost = Double.POSITIVE_INFINITY;

    VendorSets(List<Vendor> vendors, List<ItemCovers> items) {
        this.vendors = vendors;
        this.items = items;
        this.opening = vendors.stream()
                .mapToDouble(vendor -> vendor.openingCost().doubleValue())
                .toArray();
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
        double bound = Double.POSITIVE_INFINITY;
        int looked = 0;
        for (Open open : byLeastCost()) {
            if (open.least() >= bestCost - 1e-9) {
                break;
            }
            if (looked++ == MOST_SETS) {
                bound = Math.min(bound, open.least());
                break;
            }
            if (!settle(open)) {
                bound = Math.min(bound, open.least());
            }
        }
        return new Answer(best, Math.min(bound, bestCost));
    }

    /** Every set of vendors from which all items can be had, by the least that a purchase from it can cost. */
    private List<Open> byLeastCost() {
        int sellers = 0;
        for (ItemCovers item : items) {
            sellers |= item.sellers();
        }
        List<Open> sets = new ArrayList<>();
        for (int set = 1; set < 1 << vendors.size(); set++) {
            if ((set & ~sellers) == 0) {
                double least = least(set);
                if (least < Double.POSITIVE_INFINITY) {
                    sets.add(new Open(set, least));
                }
            }
        }
        Open[] sorted = sets.toArray(new Open[0]);
        Arrays.sort(sorted, (one, other) -> Double.compare(one.least(), other.least()));
        return Arrays.asList(sorted);
    }

    private double least(int set) {
        double cost = 0;
        for (int vendor = 0; vendor < opening.length; vendor++) {
            if ((set >> vendor & 1) == 1) {
                cost += opening[vendor];
            }
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

    /** Makes a plan for a set; whether none for this set can be cheaper. */
    private boolean settle(Open open) {
        List<Cover> chosen = new ArrayList<>();
        for (ItemCovers item : items) {
            Cover cover = item.from(open.set());
            if (cover == null) {
                return true;
            }
            chosen.add(cover);
        }
        MinimumOrders minimums = new MinimumOrders(vendors, items, chosen);
        boolean met = minimums.areMet();
        boolean possible = met || minimums.repair(open.set());
        if (possible) {
            double cost = minimums.cost(opening);
            if (cost < bestCost - 1e-9) {
                bestCost = cost;
                best = minimums.picks();
            }
        }
        return met && minimums.isExact();
    }
}
