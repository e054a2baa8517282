package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;

/** The cheapest cover of one item's need for every set of vendors that sell it; each is computed on demand. */
final class ItemCovers {

    /** The most vendors of one item; with more, the planner behind is asked at once. */
    static final int MOST_VENDORS = 10;

    /** How many sets of options are remembered. */
    private static final int MOST_OPTIONS = 200;

    private final ItemPrices prices;
    private final Wanted wanted;
    private final int[] vendors;
    private final AtomicReferenceArray<Cover> bySet;
    private final int sellers;
    private final Remembered<List<Number>, CoverOptions.Found> options = new Remembered<>(MOST_OPTIONS);

    ItemCovers(ItemPrices prices, Wanted wanted) {
        this.prices = prices;
        this.wanted = wanted;
        this.vendors = prices.vendors();
        this.sellers = prices.sellers();
        this.bySet = new AtomicReferenceArray<>(1 << Math.min(vendors.length, MOST_VENDORS));
    }

    /** The cheapest cover from some of the problem's vendors, one bit each; null if none of them sells it. */
    @Nullable Cover from(int open) {
        return ofOwn(own(open));
    }

    /**
     * The cheapest cover from some of its own vendors; null for an empty set.
     *
     * @param set one bit each, in the order of the vendors that sell it
     */
    @Nullable Cover ofOwn(int set) {
        if (set == 0) {
            return null;
        }
        Cover known = bySet.get(set);
        if (known == null) {
            known = find(set);
            bySet.set(set, known);
        }
        return known;
    }

    /**
     * Finds a cover. The cheapest from a larger set is also the cheapest from this one, if it needs no others. So it
     * begins with all vendors, and leaves out those of the cheapest cover that are not in the set, again and again.
     */
    private Cover find(int set) {
        int larger = (1 << vendors.length) - 1;
        while (larger != set) {
            Cover cover = Objects.requireNonNull(ofOwn(larger));
            int others = own(cover.vendors()) & ~set;
            boolean exact = cover.cost() - cover.bound() < 1e-9;
            if (exact && others == 0) {
                return cover;
            }
            larger = exact ? larger & ~others : set;
        }
        return Objects.requireNonNull(Covering.cheapest(prices.from(set), wanted));
    }

    /**
     * The ways to cover the need from some vendors when their orders count as a whole.
     *
     * @param open the vendors, one bit each; at least one of them sells it
     * @param measures what counts besides the cost
     * @param slack covers that cost more than the cheapest by this are left out; rounded up to a power of two
     */
    CoverOptions.Found options(int open, List<Measure> measures, double slack) {
        int set = own(open);
        int power = slack > 1e12 ? 40 : Math.getExponent(Math.max(0.25, slack)) + 1;
        List<Number> key = new ArrayList<>();
        key.add(set);
        key.add(power);
        for (Measure measure : measures) {
            measure.addTo(key);
        }
        return options.of(key, absent -> {
            Cover cheapest = Objects.requireNonNull(ofOwn(set));
            return CoverOptions.of(prices.from(set), wanted, cheapest, measures, Math.scalb(1.0, power));
        });
    }

    /**
     * The landed cost of some picks that cover the need, without the charges of orders, less the value of the leftover.
     */
    double cost(List<Cover.Pick> picks) {
        double cost = 0;
        double left = wanted.quantity().doubleValue();
        for (Cover.Pick pick : picks) {
            cost += pick.price().cost(pick.packs());
            left -= pick.packs() * pick.price().packSize();
        }
        return cost - wanted.worth(left);
    }

    /** The value of one unit left over, in home currency. */
    double credit() {
        return wanted.credit();
    }

    /** The prices of all vendors. */
    ItemPrices.Offered offered() {
        return prices.all();
    }

    /** The vendors that sell it, in rising order. */
    int[] vendors() {
        return vendors.clone();
    }

    /** The vendors that sell it, one bit each. */
    int sellers() {
        return sellers;
    }

    private int own(int open) {
        int set = 0;
        for (int i = 0; i < vendors.length; i++) {
            set |= (open >> vendors[i] & 1) << i;
        }
        return set;
    }
}
