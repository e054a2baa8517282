package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A way to cover one item's need: its cost, and the goods, or another {@link Measure}, that it brings to orders. */
final class Option {

    private final List<Cover.Pick> picks;
    private final double cost;
    private final double[] goods;

    /**
     * A way to cover a need.
     *
     * @param picks what is bought
     * @param cost landed cost in home currency, without the charges of orders as a whole
     * @param goods for each vendor whose minimum order value has to be met, in their currency, no more than the
     *     minimum; other measures may follow
     */
    Option(List<Cover.Pick> picks, double cost, double[] goods) {
        this.picks = picks;
        this.cost = cost;
        this.goods = goods;
    }

    List<Cover.Pick> picks() {
        return picks;
    }

    double cost() {
        return cost;
    }

    double goods(int vendor) {
        return goods[vendor];
    }

    /** The same way at another cost. */
    Option at(double otherCost) {
        return new Option(picks, otherCost, goods);
    }

    /** The options that no other beats in both cost and goods, the cheapest first. */
    static List<Option> best(List<Option> all) {
        List<Option> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingDouble(Option::cost));
        List<Option> kept = new ArrayList<>();
        for (Option option : sorted) {
            if (!option.isBeaten(kept)) {
                kept.add(option);
            }
        }
        return kept;
    }

    /** Whether a kept option costs no more and brings as much; with one vendor only the last one kept can. */
    private boolean isBeaten(List<Option> kept) {
        int first = goods.length == 1 ? Math.max(0, kept.size() - 1) : 0;
        for (int i = kept.size() - 1; i >= first; i--) {
            if (kept.get(i).bringsAsMuchAs(this)) {
                return true;
            }
        }
        return false;
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
