package perkilo.purchasing.search.quick;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The least possible cost of a purchase from each set of vendors: the cost of opening the orders, and the cheapest
 * covers.
 *
 * <p>A vendor who alone sells an item gets an order in any case, and a vendor whose orders cost nothing to open may
 * always get one ({@link MinimumOrders} sees to their minimum). So only the others are a choice. Choices are numbered;
 * a number has one bit for each of these vendors.
 */
final class SetCosts {

    /** The most vendors to choose from; with more there are too many sets. */
    private static final int MOST_OPTIONAL = 13;

    private final MinimumOrders orders;
    private final List<ItemCovers> items;
    private final int always;
    private final int[] optional;
    private double[] least = {};

    SetCosts(MinimumOrders orders, List<ItemCovers> items) {
        this.orders = orders;
        this.items = items;
        int sellers = 0;
        int sole = 0;
        for (ItemCovers item : items) {
            sellers |= item.sellers();
            sole |= Integer.bitCount(item.sellers()) == 1 ? item.sellers() : 0;
        }
        int all = sellers;
        int free = IntStream.range(0, Integer.SIZE - 1)
                .filter(vendor -> (all >> vendor & 1) == 1 && orders.opening(vendor) == 0)
                .map(vendor -> 1 << vendor)
                .sum();
        this.always = sole | free;
        this.optional = IntStream.range(0, Integer.SIZE - 1)
                .filter(vendor -> ((all & ~always) >> vendor & 1) == 1)
                .toArray();
    }

    /** Whether there are few enough sets to try all of them. */
    boolean areFew() {
        return optional.length <= MOST_OPTIONAL;
    }

    /** Computes the least cost of each choice. */
    void workOut() {
        least = new double[1 << optional.length];
        least[0] = IntStream.range(0, Integer.SIZE - 1)
                .filter(vendor -> (always >> vendor & 1) == 1)
                .mapToDouble(orders::opening)
                .sum();
        for (int choice = 1; choice < least.length; choice++) {
            least[choice] = least[choice & choice - 1] + orders.opening(optional[lowest(choice)]);
        }
        boundsBySellers().values().forEach(this::add);
    }

    /** The number of choices. */
    int count() {
        return least.length;
    }

    /** The least cost of a purchase by a choice; infinite if not all items can be bought. */
    double least(int choice) {
        return least[choice];
    }

    /** The choice with the lowest least cost, the first of several; −1 if no choice is possible. */
    int cheapest() {
        int best = -1;
        for (int choice = 0; choice < least.length; choice++) {
            if (least[choice] < (best < 0 ? Double.POSITIVE_INFINITY : least[best])) {
                best = choice;
            }
        }
        return best;
    }

    /** The vendors of a choice, with those that are always in, one bit each. */
    int set(int choice) {
        int set = always;
        for (int i = 0; i < optional.length; i++) {
            set |= (choice >> i & 1) << optional[i];
        }
        return set;
    }

    /** Items that the same vendors sell, taken together, with their bounds for each set of those that are a choice. */
    @SuppressWarnings("ArrayRecordComponent") // never compared and never shown
    private record Bounds(int[] places, double[] bySet) {}

    private Map<Integer, Bounds> boundsBySellers() {
        Map<Integer, Bounds> bySellers = new LinkedHashMap<>();
        for (ItemCovers item : items) {
            Bounds bounds = bySellers.computeIfAbsent(item.sellers(), this::noneYet);
            for (int set = 0; set < bounds.bySet.length; set++) {
                int open = always;
                for (int i = 0; i < bounds.places.length; i++) {
                    open |= (set >> i & 1) << optional[bounds.places[i]];
                }
                Cover cover = item.from(open);
                bounds.bySet[set] += cover == null ? Double.POSITIVE_INFINITY : cover.bound();
            }
        }
        return bySellers;
    }

    private Bounds noneYet(int sellers) {
        int[] places = IntStream.range(0, optional.length)
                .filter(place -> (sellers >> optional[place] & 1) == 1)
                .toArray();
        return new Bounds(places, new double[1 << places.length]);
    }

    private void add(Bounds bounds) {
        int[] own = new int[least.length];
        int[] bit = new int[optional.length];
        for (int i = 0; i < bounds.places.length; i++) {
            bit[bounds.places[i]] = 1 << i;
        }
        least[0] += bounds.bySet[0];
        for (int choice = 1; choice < own.length; choice++) {
            own[choice] = own[choice & choice - 1] | bit[lowest(choice)];
            least[choice] += bounds.bySet[own[choice]];
        }
    }

    private static int lowest(int choice) {
        return Integer.numberOfTrailingZeros(choice);
    }
}
