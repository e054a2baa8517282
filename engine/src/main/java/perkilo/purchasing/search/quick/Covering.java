package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest packs that cover one item's need from a few quotes. It tries numbers of packs quote by quote, the
 * cheapest per unit first, and leaves out choices that cannot be best even at the lowest rate.
 */
final class Covering {

    /** The most tries; then the best cover found is taken, and the lowest rate is the bound. */
    private static final int MOST_TRIES = 4000;

    /** A missing quantity below this counts as zero: it is rounding of plain fractions. */
    static final double NOTHING = 1e-12;

    private final ItemPrices.Offered offered;
    private final Wanted wanted;
    private final long[] packs;
    private double bestCost = Double.POSITIVE_INFINITY;
    private @Nullable List<Cover.Pick> best;
    private boolean complete = true;
    private int tries;

    private Covering(ItemPrices.Offered offered, Wanted wanted) {
        this.offered = offered;
        this.wanted = wanted;
        this.packs = new long[offered.count()];
    }

    /**
     * The cheapest cover.
     *
     * @param offered to choose from; none of them pays for more than is wanted
     * @return null without prices
     */
    static @Nullable Cover cheapest(ItemPrices.Offered offered, Wanted wanted) {
        Covering covering = new Covering(offered, wanted);
        double quantity = wanted.quantity().doubleValue();
        covering.single(quantity);
        if (offered.count() > 1) {
            covering.mix(0, quantity, 0);
        }
        return covering.cover(quantity);
    }

    private @Nullable Cover cover(double quantity) {
        double bound = complete && tries < MOST_TRIES ? bestCost : Math.min(bestCost, offered.least(0, quantity));
        return best == null ? null : new Cover(best, bestCost, bound);
    }

    /**
     * Covers all with one quote. It is enough to compare its fewest packs and the fewest packs of each better price. Of
     * two at the same cost the one with less leftover is taken.
     */
    private void single(double quantity) {
        PackPrice bestPrice = null;
        long bestPacks = 0;
        double bestQuantity = Double.POSITIVE_INFINITY;
        for (int at = 0; at < offered.count(); at++) {
            PackPrice price = offered.price(at);
            long fewest = price.fewest(wanted.quantity(), quantity);
            for (int tier = 0; tier < price.tiers(); tier++) {
                long some = Math.max(price.fewest(tier), fewest);
                double bought = some * price.packSize();
                double net = price.cost(some) - wanted.worth(quantity - bought);
                if (net < bestCost - 1e-9 || (net < bestCost + 1e-9 && bought < bestQuantity)) {
                    bestCost = net;
                    bestPrice = price;
                    bestPacks = some;
                    bestQuantity = bought;
                }
            }
        }
        best = bestPrice == null ? null : List.of(new Cover.Pick(bestPrice, bestPacks));
    }

    private void consider(double cost, double left) {
        double net = cost - wanted.worth(left);
        if (net >= bestCost - 1e-9) {
            return;
        }
        List<Cover.Pick> picks = picks();
        if (Cover.suffices(picks, wanted.quantity())) {
            bestCost = net;
            best = picks;
        } else {
            complete = false;
        }
    }

    private List<Cover.Pick> picks() {
        List<Cover.Pick> picks = new ArrayList<>(1);
        for (int at = 0; at < packs.length; at++) {
            if (packs[at] > 0) {
                picks.add(new Cover.Pick(offered.price(at), packs[at]));
            }
        }
        return picks;
    }

    /** Chooses packs of one quote after another; later quotes cover the rest. */
    private void mix(int at, double left, double cost) {
        if (left <= NOTHING) {
            consider(cost, left);
            return;
        }
        if (at == offered.count() || cost + offered.least(at, left) >= bestCost - 1e-9 || ++tries > MOST_TRIES) {
            return;
        }
        PackPrice price = offered.price(at);
        for (int tier = 0; tier < price.tiers(); tier++) {
            take(at, price.packs(tier, left), left, cost);
        }
        if (at + 1 < offered.count()) {
            long most = price.packs(0, left) - price.multiple();
            for (long some = most; some >= price.fewest() && tries <= MOST_TRIES; some -= price.multiple()) {
                take(at, some, left, cost);
            }
            mix(at + 1, left, cost);
        }
    }

    private void take(int at, long some, double left, double cost) {
        PackPrice price = offered.price(at);
        packs[at] = some;
        mix(at + 1, left - some * price.packSize(), cost + price.cost(some));
        packs[at] = 0;
    }
}
