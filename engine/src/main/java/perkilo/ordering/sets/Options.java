package perkilo.ordering.sets;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * Finds the ways to cover one item's need that are worth a look where vendors have minimum order values: more than is
 * needed may be bought from them, up to the minimum.
 */
final class Options {

    /** After so many tries the search is given up. */
    private static final int MOST_TRIES = 20_000;

    private final List<PackPrice> prices;
    private final double[] rateFrom;
    private final int[] vendors;
    private final double[] minimum;
    private final Deque<Cover.Pick> picks = new ArrayDeque<>();
    private List<Option> found = new ArrayList<>();
    private double enough;
    private int tries;

    private Options(List<PackPrice> prices, int[] vendors, double[] minimum, double enough) {
        this.prices = prices.stream()
                .sorted(Comparator.comparingDouble(PackPrice::lowestRate).thenComparingInt(PackPrice::index))
                .toList();
        this.rateFrom = new double[prices.size() + 1];
        this.enough = enough;
        for (int i = prices.size() - 1; i >= 0; i--) {
            double later = i == prices.size() - 1 ? Double.POSITIVE_INFINITY : rateFrom[i + 1];
            rateFrom[i] = Math.min(later, this.prices.get(i).lowestRate());
        }
        this.vendors = vendors;
        this.minimum = minimum;
    }

    /**
     * What was found.
     *
     * @param options the cheapest first, at least one
     * @param complete whether nothing was left out
     */
    record Found(List<Option> options, boolean complete) {}

    /**
     * The ways to cover a need.
     *
     * @param prices to choose from
     * @param cheapest the cheapest cover from them
     * @param vendors whose minimum has to be met
     * @param minimum as many as vendors
     * @param slack what costs more than the cheapest cover by this is of no use
     */
    static Found of(
            List<PackPrice> prices, BigDecimal need, Cover cheapest, int[] vendors, double[] minimum, double slack) {
        Options options = new Options(prices, vendors, minimum, cheapest.cost() + slack);
        options.keep(cheapest.picks(), cheapest.cost());
        options.mix(0, need.doubleValue(), 0);
        boolean complete = options.tries <= MOST_TRIES && cheapest.cost() - cheapest.bound() < 1e-6;
        return new Found(Option.best(options.found), complete);
    }

    private void mix(int at, double left, double cost) {
        if (at == prices.size()) {
            if (left <= 1e-12 && cost < enough) {
                keep(List.copyOf(picks), cost);
            }
            return;
        }
        double more = left <= 0 ? 0 : left * rateFrom[at];
        if (cost + more >= enough || ++tries > MOST_TRIES) {
            return;
        }
        mix(at + 1, left, cost);
        PackPrice price = prices.get(at);
        long step = price.quote().multiple();
        long most = Math.max(packsToCover(price, left), packsToMinimum(price));
        for (long packs = first(price, step); packs <= most && tries <= MOST_TRIES; packs += step) {
            if (price.quote().tierFor(packs) >= 0) {
                picks.addLast(new Cover.Pick(price, packs));
                mix(at + 1, left - packs * price.packSize(), cost + price.cost(packs));
                picks.removeLast();
            }
        }
    }

    private static long first(PackPrice price, long step) {
        long smallest = price.quote().packsFor(price.quote().smallestLine());
        return Math.max(step, smallest);
    }

    /** The most packs that covering alone may ask for, better prices included; none where nothing is left. */
    private static long packsToCover(PackPrice price, double left) {
        if (left <= 1e-12) {
            return 0;
        }
        long most = 0;
        for (long packs : price.worthwhile(BigDecimal.valueOf(left))) {
            most = Math.max(most, packs);
        }
        return most;
    }

    /** The most packs that a vendor's minimum may ask for. */
    private long packsToMinimum(PackPrice price) {
        for (int i = 0; i < vendors.length; i++) {
            if (price.quote().vendor() == vendors[i]) {
                long step = price.quote().multiple();
                long packs = first(price, step);
                while (price.quote().tierFor(packs) < 0 || price.goods(packs) < minimum[i]) {
                    packs += step;
                    if (packs > MOST_TRIES) {
                        return packs;
                    }
                }
                return packs;
            }
        }
        return 0;
    }

    private void keep(List<Cover.Pick> all, double cost) {
        double[] goods = new double[vendors.length];
        boolean full = true;
        for (int i = 0; i < vendors.length; i++) {
            for (Cover.Pick pick : all) {
                goods[i] += pick.price().quote().vendor() == vendors[i]
                        ? pick.price().goods(pick.packs())
                        : 0;
            }
            goods[i] = Math.min(goods[i], minimum[i]);
            full &= goods[i] >= minimum[i];
        }
        found.add(new Option(all, cost, goods));
        if (full) {
            enough = Math.min(enough, cost + 1e-9);
        }
        if (found.size() > 400) {
            found = new ArrayList<>(Option.best(found));
        }
    }
}
