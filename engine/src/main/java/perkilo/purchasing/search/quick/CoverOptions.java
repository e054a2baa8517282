package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the ways to cover one item's need that are worth trying when orders count as a whole: none is beaten by another
 * in both cost and all measures. Where vendors have minimum order values, more than is needed may be bought from them,
 * up to the minimum.
 */
final class CoverOptions {

    /** The most tries; then the search is given up. */
    private static final int MOST_TRIES = 20_000;

    /** Give up above this many non-dominated covers; the full search is faster then. */
    private static final int MOST_KEPT = 1000;

    private final ItemPrices.Offered offered;
    private final Wanted wanted;
    private final List<Measure> measures;
    private final long[] packs;
    private List<Option> found = new ArrayList<>();
    private int sortOutAt = 200;
    private double enough;
    private boolean complete = true;
    private int tries;

    private CoverOptions(ItemPrices.Offered offered, Wanted wanted, List<Measure> measures, double enough) {
        this.offered = offered;
        this.wanted = wanted;
        this.measures = measures;
        this.packs = new long[offered.count()];
        this.enough = enough;
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
     * @param offered the prices to choose from
     * @param cheapest the cheapest cover from them
     * @param measures what counts besides the cost
     * @param slack covers that cost more than the cheapest by this are left out
     */
    static Found of(ItemPrices.Offered offered, Wanted wanted, Cover cheapest, List<Measure> measures, double slack) {
        CoverOptions options = new CoverOptions(offered, wanted, measures, cheapest.cost() + slack);
        options.keep(cheapest.picks(), cheapest.cost());
        options.mix(0, wanted.quantity().doubleValue(), 0);
        boolean complete = options.complete && options.tries <= MOST_TRIES && cheapest.cost() - cheapest.bound() < 1e-6;
        return new Found(Option.best(options.found), complete);
    }

    private void mix(int at, double left, double cost) {
        if (at == offered.count()) {
            consider(left, cost - wanted.worth(left));
            return;
        }
        if (cost + least(at, left) >= enough || ++tries > MOST_TRIES) {
            return;
        }
        mix(at + 1, left, cost);
        PackPrice price = offered.price(at);
        long most = Math.max(packsToCover(price, left), packsForOrder(price));
        for (long some = price.fewest(); some <= most && tries <= MOST_TRIES; some += price.multiple()) {
            packs[at] = some;
            mix(at + 1, left - some * price.packSize(), cost + price.cost(some));
        }
        packs[at] = 0;
    }

    /** The least cost of the rest; below zero if something is left over already. */
    private double least(int at, double left) {
        return left > 0 ? offered.least(at, left) : -wanted.worth(left);
    }

    private void consider(double left, double net) {
        if (left > Covering.NOTHING || net >= enough) {
            return;
        }
        List<Cover.Pick> picks = new ArrayList<>();
        for (int at = 0; at < packs.length; at++) {
            if (packs[at] > 0) {
                picks.add(new Cover.Pick(offered.price(at), packs[at]));
            }
        }
        if (left < -1e-6 || Cover.suffices(picks, wanted.quantity())) {
            keep(picks, net);
        } else {
            complete = false;
        }
    }

    /** The most packs that covering alone may need, better prices included; zero if nothing is missing. */
    private static long packsToCover(PackPrice price, double left) {
        long most = 0;
        for (int tier = 0; tier < price.tiers() && left > Covering.NOTHING; tier++) {
            most = Math.max(most, price.packs(tier, left));
        }
        return most;
    }

    /**
     * The most packs that may pay for the sake of the vendor's order, as for its minimum. A better price lowers the
     * value of an order, so each price has its own number of packs above which more packs only cost more.
     */
    private long packsForOrder(PackPrice price) {
        long most = 0;
        for (Measure measure : measures) {
            if (price.vendor() == measure.vendor() && measure.worthBuying() > 0) {
                double net = measure.of() == Measure.Of.GOODS ? price.netOfMore(wanted.credit()) : 1;
                most = Math.max(most, packsToReach(measure.worthBuying() / net, price));
            }
        }
        return most;
    }

    private static long packsToReach(double goods, PackPrice price) {
        long most = 0;
        for (int tier = 0; tier < price.tiers(); tier++) {
            long some = price.fewest(tier);
            for (int step = 0; price.goods(some) < goods && step <= MOST_TRIES; step++) {
                some += price.multiple();
            }
            most = Math.max(most, some);
        }
        return most;
    }

    private void keep(List<Cover.Pick> picks, double cost) {
        double[] measured = new double[measures.size()];
        boolean full = true;
        for (int i = 0; i < measured.length; i++) {
            Measure measure = measures.get(i);
            measured[i] = measure.in(picks);
            full &= measured[i] >= measure.enough();
        }
        found.add(new Option(picks, cost, measured));
        if (full) {
            enough = Math.min(enough, cost + 1e-9);
        }
        if (found.size() > sortOutAt) {
            found = new ArrayList<>(Option.best(found));
            sortOutAt = 200 + 2 * found.size();
            tries = found.size() > MOST_KEPT ? MOST_TRIES + 1 : tries;
        }
    }
}
