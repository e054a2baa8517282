package perkilo.ordering.sets;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest packs that cover one item's need from a few quotes: tries numbers of packs quote by quote, the
 * cheapest per unit first, and leaves out what even the lowest rate can't make pay.
 */
final class Covering {

    /** After so many tries the best found is taken and the lowest rate is the bound. */
    private static final int MOST_TRIES = 4000;

    private final List<PackPrice> prices;
    private final double[] rateFrom;
    private final BigDecimal need;
    private final Deque<Cover.Pick> picks = new ArrayDeque<>();
    private double bestCost = Double.POSITIVE_INFINITY;
    private @Nullable List<Cover.Pick> best;
    private int tries;

    private Covering(List<PackPrice> prices, BigDecimal need) {
        this.prices = prices.stream()
                .sorted(Comparator.comparingDouble(PackPrice::lowestRate).thenComparingInt(PackPrice::index))
                .toList();
        this.need = need;
        this.rateFrom = new double[prices.size() + 1];
        rateFrom[prices.size()] = Double.POSITIVE_INFINITY;
        for (int i = prices.size() - 1; i >= 0; i--) {
            rateFrom[i] = Math.min(rateFrom[i + 1], this.prices.get(i).lowestRate());
        }
    }

    /**
     * The cheapest cover.
     *
     * @param prices to choose from
     * @param need above zero
     * @return empty without prices
     */
    static Optional<Cover> cheapest(List<PackPrice> prices, BigDecimal need) {
        Covering covering = new Covering(prices, need);
        covering.single();
        covering.mix(0, need.doubleValue(), 0);
        List<Cover.Pick> best = covering.best;
        if (best == null) {
            return Optional.empty();
        }
        int vendors = 0;
        for (Cover.Pick pick : best) {
            vendors |= 1 << pick.price().quote().vendor();
        }
        double bound = covering.tries < MOST_TRIES
                ? covering.bestCost
                : Math.min(covering.bestCost, covering.rateFrom[0] * need.doubleValue());
        return Optional.of(new Cover(best, covering.bestCost, bound, vendors));
    }

    private void single() {
        for (PackPrice price : prices) {
            for (long packs : price.worthwhile(need)) {
                offer(List.of(new Cover.Pick(price, packs)), price.cost(packs));
            }
        }
    }

    private void offer(List<Cover.Pick> candidate, double cost) {
        if (cost < bestCost - 1e-9) {
            bestCost = cost;
            best = candidate;
        }
    }

    /** Chooses packs of one quote after another; what is left is covered by those that follow. */
    private void mix(int at, double left, double cost) {
        if (left <= 1e-12) {
            offer(List.copyOf(picks), cost);
            return;
        }
        if (at == prices.size() || cost + left * rateFrom[at] >= bestCost - 1e-9 || ++tries > MOST_TRIES) {
            return;
        }
        PackPrice price = prices.get(at);
        for (long packs : price.worthwhile(BigDecimal.valueOf(left))) {
            pick(at, price, packs, left, cost);
        }
        if (at + 1 < prices.size()) {
            long step = price.quote().multiple();
            long most = price.quote().packsFor(BigDecimal.valueOf(left)) - step;
            for (long packs = most; packs > 0 && tries <= MOST_TRIES; packs -= step) {
                if (price.quote().quantity(packs).compareTo(price.quote().smallestLine()) < 0) {
                    break;
                }
                pick(at, price, packs, left, cost);
            }
            mix(at + 1, left, cost);
        }
    }

    private void pick(int at, PackPrice price, long packs, double left, double cost) {
        picks.addLast(new Cover.Pick(price, packs));
        mix(at + 1, left - packs * price.packSize(), cost + price.cost(packs));
        picks.removeLast();
    }
}
