package perkilo.purchasing.search.quick;

import java.util.Arrays;
import java.util.List;

/**
 * The price of a unit of missing goods for each vendor's minimum order value, and the bound that follows: no choice of
 * options costs less.
 *
 * <p>With goods paid at these prices every item chooses its option by itself, and the total is a bound at any prices
 * (Lagrangian relaxation; Held, Wolfe and Crowder, Validation of subgradient optimization, 1974, from memory). Prices
 * are raised for vendors whose goods are missing, and lowered for vendors with more than enough, as long as the bound
 * may climb.
 */
final class GoodsPrices {

    private static final int MOST_STEPS = 30;
    private static final double FIRST_STRIDE = 1.2;
    private static final double SHORTER = 0.9;

    /** The highest value of all goods of a minimum, as a multiple of the whole cost. */
    private static final double MOST_WORTH = 1e4;

    private final List<CoverOptions.Found> items;
    private final double[] minimum;
    private final double[] shortfall;
    private double[] prices;
    private double[] best;
    private double bound = Double.NEGATIVE_INFINITY;

    /**
     * Prices for a choice to be made.
     *
     * @param minimum the values to be met, one per vendor, above zero
     * @param limit the bound need not climb beyond
     */
    GoodsPrices(List<CoverOptions.Found> items, double[] minimum, double limit) {
        this.items = items;
        this.minimum = minimum;
        this.shortfall = new double[minimum.length];
        this.prices = new double[minimum.length];
        this.best = prices.clone();
        climb(limit);
    }

    /** The bound: no choice costs less. */
    double bound() {
        return bound;
    }

    /** The value of the goods missing from the minimums, if no vendor's goods are above their minimum. */
    double missing(double[] goods) {
        double missing = 0;
        for (int vendor = 0; vendor < best.length; vendor++) {
            missing += best[vendor] * (minimum[vendor] - goods[vendor]);
        }
        return missing;
    }

    /** The cost of an option less the value of its goods. */
    double net(Option option) {
        return net(option, best);
    }

    private static double net(Option option, double[] prices) {
        double net = option.cost();
        for (int vendor = 0; vendor < prices.length; vendor++) {
            net -= prices[vendor] * option.goods(vendor);
        }
        return net;
    }

    private void climb(double limit) {
        double stride = FIRST_STRIDE;
        for (int step = 0; step < MOST_STEPS && bound < limit; step++) {
            double here = evaluate();
            if (here > bound) {
                bound = here;
                best = prices.clone();
            } else {
                stride *= SHORTER;
            }
            double length = 0;
            for (int vendor = 0; vendor < minimum.length; vendor++) {
                double share = shortfall[vendor] / minimum[vendor];
                length += share * share;
            }
            if (length < 1e-18) {
                return;
            }
            double aim = Double.isInfinite(limit) ? Math.abs(here) * 0.2 + 1 : Math.max(limit - here, 1e-6);
            move(stride * aim / length, MOST_WORTH * (Math.abs(here) + 1));
        }
    }

    /** Moves the prices, up to a highest one: beyond that the sums get so large that the bound is lost in rounding. */
    private void move(double stride, double mostWorth) {
        double[] next = new double[prices.length];
        for (int vendor = 0; vendor < next.length; vendor++) {
            double share = shortfall[vendor] / minimum[vendor];
            double raised = prices[vendor] + stride * share / minimum[vendor];
            next[vendor] = Math.min(Math.max(0, raised), mostWorth / minimum[vendor]);
        }
        prices = next;
    }

    /** Computes the bound at the prices, and how much is then missing from each vendor's minimum. */
    private double evaluate() {
        Arrays.setAll(shortfall, vendor -> minimum[vendor]);
        double sum = 0;
        for (int vendor = 0; vendor < minimum.length; vendor++) {
            sum += prices[vendor] * minimum[vendor];
        }
        for (CoverOptions.Found item : items) {
            Option chosen = null;
            double least = Double.POSITIVE_INFINITY;
            for (Option option : item.options()) {
                double net = net(option, prices);
                if (net < least) {
                    least = net;
                    chosen = option;
                }
            }
            sum += least;
            for (int vendor = 0; chosen != null && vendor < prices.length; vendor++) {
                shortfall[vendor] -= chosen.goods(vendor);
            }
        }
        return sum;
    }
}
