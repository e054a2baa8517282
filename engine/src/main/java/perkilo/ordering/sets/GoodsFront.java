package perkilo.ordering.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Chooses one option for each item so that the vendors' minimum order values are met and the whole costs least.
 *
 * <p>Item by item, keeping the partial choices that no other beats in cost and goods at once. A partial choice is given
 * up where the goods that are still missing, beyond what the cheapest options bring anyway, would cost too much even at
 * the lowest price of goods that any item to come offers.
 */
final class GoodsFront {

    private static final int MOST_PARTIAL = 1000;

    /** More are never held at once: before that they are sorted out. */
    private static final int MOST_EXTENDED = 50_000;

    private final List<Options.Found> items;
    private final double[] minimum;
    private final double limit;
    private final double[] rest;
    private final double[][] free;
    private final double[][] rate;
    private boolean complete = true;

    /**
     * A choice to be made.
     *
     * @param items options of each item
     * @param minimum what has to be met, one per vendor
     * @param limit what costs as much is of no use
     */
    GoodsFront(List<Options.Found> items, double[] minimum, double limit) {
        this.items = items;
        this.minimum = minimum;
        this.limit = limit;
        int size = items.size();
        this.rest = new double[size + 1];
        this.free = new double[size + 1][minimum.length];
        this.rate = new double[size + 1][minimum.length];
        Arrays.fill(rate[size], Double.POSITIVE_INFINITY);
        for (int at = size - 1; at >= 0; at--) {
            fromHere(at);
        }
    }

    @SuppressWarnings("ArrayRecordComponent") // never compared and never shown; very many are made
    private record Partial(
            @Nullable Partial before, @Nullable Option option, double cost, double[] goods) {}

    /** Whether nothing was left out that could have been chosen. */
    boolean isComplete() {
        return complete;
    }

    /** The chosen options, one per item in their order; null where nothing meets the minimums below the limit. */
    @Nullable List<Option> choose() {
        List<Partial> front = List.of(new Partial(null, null, 0, new double[minimum.length]));
        for (int at = 0; at < items.size(); at++) {
            complete &= items.get(at).complete();
            List<Partial> next = extended(front, at);
            front = items.get(at).options().size() == 1 ? next : best(next);
        }
        Partial best = null;
        for (Partial partial : front) {
            if (reaches(partial.goods, minimum) && (best == null || partial.cost < best.cost)) {
                best = partial;
            }
        }
        return best == null ? null : chosen(best);
    }

    /** What the items from here on cost and bring at least, and the lowest price of goods beyond that. */
    private void fromHere(int at) {
        List<Option> options = items.get(at).options();
        Option cheapest = options.get(0);
        rest[at] = rest[at + 1] + cheapest.cost();
        for (int vendor = 0; vendor < minimum.length; vendor++) {
            free[at][vendor] = free[at + 1][vendor] + cheapest.goods(vendor);
            double lowest = rate[at + 1][vendor];
            for (Option option : options) {
                double more = option.goods(vendor) - cheapest.goods(vendor);
                if (more > 1e-9) {
                    lowest = Math.min(lowest, (option.cost() - cheapest.cost()) / more);
                }
            }
            rate[at][vendor] = lowest;
        }
    }

    /** Option by option, so that what comes out is sorted in runs and quickly sorted in all. */
    private List<Partial> extended(List<Partial> front, int at) {
        List<Partial> next = new ArrayList<>();
        for (Option option : items.get(at).options()) {
            for (Partial partial : front) {
                double cost = partial.cost + option.cost();
                if (cost + rest[at + 1] >= limit) {
                    break;
                }
                double[] goods = together(partial.goods, option);
                if (cost + rest[at + 1] + missing(goods, at + 1) < limit) {
                    next.add(new Partial(partial, option, cost, goods));
                }
            }
            if (next.size() > MOST_EXTENDED) {
                next = best(next);
            }
        }
        return next;
    }

    /** The least that the goods which are still missing cost on top. */
    private double missing(double[] goods, int at) {
        double most = 0;
        for (int vendor = 0; vendor < minimum.length; vendor++) {
            double short0 = minimum[vendor] - goods[vendor] - free[at][vendor];
            if (short0 > 1e-9) {
                most = Math.max(most, short0 * rate[at][vendor]);
            }
        }
        return most;
    }

    private double[] together(double[] one, Option other) {
        double[] sum = new double[one.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = Math.min(minimum[i], one[i] + other.goods(i));
        }
        return sum;
    }

    private List<Partial> best(List<Partial> all) {
        all.sort(Comparator.comparingDouble(Partial::cost));
        List<Partial> kept = new ArrayList<>();
        for (Partial partial : all) {
            if (!isBeaten(partial, kept)) {
                if (kept.size() == MOST_PARTIAL) {
                    complete = false;
                    break;
                }
                kept.add(partial);
            }
        }
        return kept;
    }

    /** Whether one that costs no more brings as much; with one vendor only the last one kept can. */
    private boolean isBeaten(Partial partial, List<Partial> kept) {
        int first = minimum.length == 1 ? Math.max(0, kept.size() - 1) : 0;
        for (int i = kept.size() - 1; i >= first; i--) {
            if (reaches(kept.get(i).goods, partial.goods)) {
                return true;
            }
        }
        return false;
    }

    private static List<Option> chosen(Partial last) {
        List<Option> options = new ArrayList<>();
        for (Partial at = last; at != null; at = at.before) {
            Option option = at.option;
            if (option != null) {
                options.add(0, option);
            }
        }
        return options;
    }

    private static boolean reaches(double[] goods, double[] other) {
        for (int i = 0; i < goods.length; i++) {
            if (goods[i] < other[i] - 1e-9) {
                return false;
            }
        }
        return true;
    }
}
