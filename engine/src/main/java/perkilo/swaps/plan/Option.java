package perkilo.swaps.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A way to cover one item's need, by what it costs and by the goods it brings to the vendors whose minimum order value
 * has to be met.
 *
 * @param picks what is bought
 * @param cost landed, without what is charged for orders as a whole, in home currency
 * @param goods for each of these vendors, in its currency, no more than its minimum
 */
@SuppressWarnings("ArrayRecordComponent") // never compared as a value; many are made
record Option(List<Cover.Pick> picks, double cost, double[] goods) {

    /** Those that no other beats in cost and goods at once, the cheapest first. */
    static List<Option> best(List<Option> all) {
        List<Option> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingDouble(Option::cost));
        List<Option> kept = new ArrayList<>();
        for (Option option : sorted) {
            if (kept.stream().noneMatch(other -> other.bringsAsMuchAs(option))) {
                kept.add(option);
            }
        }
        return kept;
    }

    private boolean bringsAsMuchAs(Option other) {
        for (int i = 0; i < goods.length; i++) {
            if (goods[i] < other.goods[i] - 1e-9) {
                return false;
            }
        }
        return true;
    }
}
