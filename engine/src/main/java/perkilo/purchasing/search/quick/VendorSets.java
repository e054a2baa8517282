package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.DutySpread;
import perkilo.purchasing.Vendor;

/** Tries all sets of vendors that may get an order, the least possible cost first. */
final class VendorSets {

    /** The most sets tried; then the best plan is taken, and the next set's least possible cost is the bound. */
    private static final int MOST_SETS = 256;

    /** How often a search that left something open is done again, with the purchase it found to begin with. */
    private static final int MOST_AGAIN = 2;

    private final SetCosts costs;
    private final MinimumOrders orders;

    VendorSets(List<Vendor> vendors, DutySpread[] rates, List<ItemCovers> items) {
        this.orders = new MinimumOrders(vendors, rates, items);
        this.costs = new SetCosts(orders, items);
    }

    /**
     * What was found.
     *
     * @param picks for each item; null if no purchase was found
     * @param bound no purchase costs less
     */
    record Answer(@Nullable List<List<Cover.Pick>> picks, double bound) {}

    private record Open(int set, double least) {}

    /** Whether there are few enough vendors to choose from to try all sets. */
    boolean areFew() {
        return costs.areFew();
    }

    /**
     * Finds the cheapest purchase.
     *
     * @param known a purchase of nearly the same to start from, if there is one
     */
    Answer search(KnownPurchases.@Nullable Known known) {
        costs.workOut();
        if (known != null) {
            orders.startFrom(known);
        }
        int cheapest = costs.cheapest();
        if (cheapest >= 0) {
            orders.tryOut(costs.set(cheapest));
        }
        double bound = lookThrough();
        for (int again = 0; again < MOST_AGAIN && bound < orders.bestCost() - DutySearch.TOLERANCE; again++) {
            orders.beginAgain();
            bound = Math.max(bound, lookThrough());
        }
        return new Answer(orders.best(), Math.min(bound, orders.bestCost()));
    }

    /**
     * Looks into all sets that may cost less than the best purchase so far. The better that is, the more can be left
     * out.
     *
     * @return no purchase costs less than this and than the best
     */
    private double lookThrough() {
        List<Open> sets = belowBest();
        sets.stream().limit(MOST_SETS).forEach(open -> orders.tryOut(open.set()));
        int looked = 0;
        for (Open open : sets) {
            if (open.least() >= orders.bestCost() - 1e-9) {
                break;
            }
            if (looked++ == MOST_SETS) {
                return Math.min(open.least(), orders.unsettled());
            }
            orders.lookInto(open.set());
        }
        return orders.unsettled();
    }

    /** The sets of vendors that may cost less than the best purchase so far, by the least that they can cost. */
    private List<Open> belowBest() {
        List<Open> sets = new ArrayList<>();
        for (int choice = 0; choice < costs.count(); choice++) {
            double least = costs.least(choice);
            if (least < orders.bestCost() - 1e-9) {
                sets.add(new Open(costs.set(choice), least));
            }
        }
        sets.sort(Comparator.comparingDouble(Open::least).thenComparingInt(Open::set));
        return sets;
    }
}
