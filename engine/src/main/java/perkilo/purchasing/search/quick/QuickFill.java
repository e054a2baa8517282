package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.List;

/**
 * Chooses one option for each item so that the vendors' minimum order values are met, by a greedy search: a choice to
 * beat.
 *
 * <p>It begins with the cheapest options. As long as goods are missing, it takes the option that brings missing goods
 * at the lowest price. On the way it remembers the cheapest single step that brings all of them.
 */
final class QuickFill {

    private final List<CoverOptions.Found> items;
    private final double[] minimum;
    private final Option[] chosen;
    private final double[] goods;
    private double cost;
    private double bestCost = Double.POSITIVE_INFINITY;
    private List<Option> best = List.of();

    QuickFill(List<CoverOptions.Found> items, double[] minimum) {
        this.items = items;
        this.minimum = minimum;
        this.chosen = new Option[items.size()];
        this.goods = new double[minimum.length];
        for (int item = 0; item < chosen.length; item++) {
            choose(item, items.get(item).options().get(0));
        }
        int most = items.stream().mapToInt(item -> item.options().size()).sum();
        int steps = 0;
        boolean going = true;
        while (going && !isFull()) {
            going = steps++ < most && step();
        }
        if (isFull()) {
            remember(cost);
        }
    }

    /** The cost of the choice; infinite if none was found. */
    double cost() {
        return bestCost;
    }

    /** The choice, one per item in their order. */
    List<Option> options() {
        return best;
    }

    private boolean isFull() {
        for (int vendor = 0; vendor < minimum.length; vendor++) {
            if (missing(vendor) > 1e-9) {
                return false;
            }
        }
        return true;
    }

    private double missing(int vendor) {
        return minimum[vendor] - goods[vendor];
    }

    private void choose(int item, Option option) {
        Option before = chosen[item];
        cost += option.cost() - (before == null ? 0 : before.cost());
        for (int vendor = 0; vendor < goods.length; vendor++) {
            goods[vendor] += option.goods(vendor) - (before == null ? 0 : before.goods(vendor));
        }
        chosen[item] = option;
    }

    /** Takes one more option; false if none brings anything. */
    private boolean step() {
        int item = -1;
        Option next = null;
        double lowest = Double.POSITIVE_INFINITY;
        for (int at = 0; at < chosen.length; at++) {
            for (Option option : items.get(at).options()) {
                double more = option.cost() - chosen[at].cost();
                double brings = brings(at, option);
                if (brings > 1e-9 && more / brings < lowest) {
                    lowest = more / brings;
                    item = at;
                    next = option;
                }
                if (cost + more < bestCost && fills(at, option)) {
                    remember(at, option, cost + more);
                }
            }
        }
        if (next == null) {
            return false;
        }
        choose(item, next);
        return true;
    }

    /** How much of the missing goods an option brings beyond the chosen one. */
    private double brings(int item, Option option) {
        double brings = 0;
        for (int vendor = 0; vendor < goods.length; vendor++) {
            double before = Math.max(0, missing(vendor));
            double after = Math.max(0, missing(vendor) - option.goods(vendor) + chosen[item].goods(vendor));
            brings += before - after;
        }
        return brings;
    }

    private boolean fills(int item, Option option) {
        for (int vendor = 0; vendor < goods.length; vendor++) {
            if (missing(vendor) - option.goods(vendor) + chosen[item].goods(vendor) > 1e-9) {
                return false;
            }
        }
        return true;
    }

    private void remember(int item, Option option, double total) {
        Option before = chosen[item];
        chosen[item] = option;
        remember(total);
        chosen[item] = before;
    }

    private void remember(double total) {
        if (total < bestCost) {
            bestCost = total;
            best = new ArrayList<>(List.of(chosen));
        }
    }
}
