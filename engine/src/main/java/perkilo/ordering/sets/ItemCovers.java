package perkilo.ordering.sets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The cheapest cover of one item's need for every set of vendors that sell it. */
final class ItemCovers {

    /** With more vendors for one item than this the planner is asked at once. */
    static final int MOST_VENDORS = 6;

    private final List<PackPrice> prices;
    private final int[] vendors;
    private final @Nullable Cover[] bySet;
    private final BigDecimal need;
    private final Map<List<Integer>, Options.Found> options = new ConcurrentHashMap<>();

    private ItemCovers(BigDecimal need, List<PackPrice> prices, int[] vendors, @Nullable Cover[] bySet) {
        this.need = need;
        this.prices = List.copyOf(prices);
        this.vendors = vendors;
        this.bySet = bySet;
    }

    /** The covers of a need; null where too many vendors sell it. */
    static @Nullable ItemCovers of(List<PackPrice> prices, BigDecimal need) {
        int[] vendors = prices.stream()
                .mapToInt(price -> price.quote().vendor())
                .distinct()
                .sorted()
                .toArray();
        if (vendors.length > MOST_VENDORS) {
            return null;
        }
        @Nullable Cover[] bySet = new Cover[1 << vendors.length];
        for (int set = 1; set < bySet.length; set++) {
            int open = global(vendors, set);
            List<PackPrice> offered = new ArrayList<>();
            for (PackPrice price : prices) {
                if ((open >> price.quote().vendor() & 1) == 1) {
                    offered.add(price);
                }
            }
            Optional<Cover> cover = Covering.cheapest(offered, need);
            bySet[set] = cover.orElse(null);
        }
        return new ItemCovers(need, prices, vendors, bySet);
    }

    /** The cheapest cover from some of the problem's vendors, given bit by bit; null where none of them sells it. */
    @Nullable Cover from(int open) {
        int set = 0;
        for (int i = 0; i < vendors.length; i++) {
            set |= (open >> vendors[i] & 1) << i;
        }
        return bySet[set];
    }

    /**
     * The ways to cover the need from some vendors where others' minimum order values have to be met.
     *
     * @param open the vendors, bit by bit; at least one of them sells it
     * @param full whose minimums have to be met
     * @param minimum as many as {@code full}
     * @param slack what costs more than the cheapest cover by this is of no use; the next power of two is taken
     */
    Options.Found options(int open, int[] full, double[] minimum, double slack) {
        int set = open & sellers();
        int power = slack > 1e12 ? 40 : Math.getExponent(Math.max(0.25, slack)) + 1;
        List<Integer> key = new ArrayList<>();
        key.add(set);
        key.add(power);
        for (int vendor : full) {
            key.add(vendor);
        }
        return options.computeIfAbsent(key, absent -> {
            Cover cheapest = Objects.requireNonNull(from(set));
            List<PackPrice> offered = prices.stream()
                    .filter(price -> (set >> price.quote().vendor() & 1) == 1)
                    .toList();
            return Options.of(offered, need, cheapest, full, minimum, Math.scalb(1.0, power));
        });
    }

    /** The prices of its quotes, in the order of the quotes. */
    List<PackPrice> prices() {
        return prices;
    }

    /** All vendors that sell it, bit by bit. */
    int sellers() {
        return global(vendors, (1 << vendors.length) - 1);
    }

    private static int global(int[] vendors, int set) {
        int open = 0;
        for (int i = 0; i < vendors.length; i++) {
            open |= (set >> i & 1) << vendors[i];
        }
        return open;
    }
}
