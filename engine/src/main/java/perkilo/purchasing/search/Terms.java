package perkilo.purchasing.search;

import java.util.Arrays;

/**
 * What an item pays and gets, besides the cost of its lines, while it is planned on its own.
 *
 * <p>Charges stand for the orders that it makes necessary; rewards for what its goods add to minimum order values; the
 * price of cash for what its lines take from a limited budget.
 */
final class Terms {
    /** By link: what standing in the order costs the item; infinite where it may not. */
    final double[] charge;
    /** By order: what making up the whole minimum order value would be rewarded with. */
    final double[] reward;
    /** By period: what one unit of money paid out counts for; one where cash is not limited. */
    final double[] money;
    /** By offer: the fewest steps that have to be bought; zero where nothing has to. */
    final long[] atLeast;
    /** By item: of how many offers something has to be bought. */
    final int[] forcedLines;
    /** By offer: the most steps that may be bought. */
    final long[] atMost;

    Terms(SearchMarket market) {
        charge = new double[market.links.size()];
        reward = new double[market.orders.count];
        money = new double[market.periods];
        Arrays.fill(money, 1);
        forcedLines = new int[market.items.size()];
        atLeast = new long[market.offers.size()];
        atMost = market.offers.stream().mapToLong(offer -> offer.mostSteps).toArray();
    }

    boolean forced(Link link) {
        for (PackChoice offer : link.offers()) {
            if (atLeast[offer.id] > 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether standing in the order is closed to the item, or could serve nothing but a minimum that has no price. */
    boolean pointless(Link link) {
        return charge[link.id()] == Double.POSITIVE_INFINITY || (reward[link.order()] == 0 && !link.covers());
    }

    /** Whether a line of the offer costs just what it costs. */
    boolean plain(PackChoice offer) {
        return reward[offer.order] == 0
                && money[offer.period] == 1
                && atLeast[offer.id] == 0
                && atMost[offer.id] == offer.mostSteps;
    }

    /** What a line of the offer counts for. */
    double cost(PackChoice offer, long steps) {
        double landed = offer.costs.landed(steps);
        return landed == Double.POSITIVE_INFINITY
                ? landed
                : offer.cost(steps)
                        + (money[offer.period] - 1) * landed
                        - reward[offer.order] * offer.costs.share(steps);
    }

    /** The line of {@code fewest} to {@code most} steps that counts for least; the shortest of equals. */
    long cheapestFrom(PackChoice offer, long fewest, long most) {
        long cheapest = fewest;
        double least = Double.POSITIVE_INFINITY;
        long n = fewest;
        while (n <= most) {
            double cost = cost(offer, n);
            if (cost < least) {
                least = cost;
                cheapest = n;
            }
            n = rises(offer) ? offer.costs.nextPiece(n) : n + 1;
        }
        return cheapest;
    }

    /** The most by which rounding moves what a line counts for. */
    double roundingError(PackChoice offer) {
        double error = offer.costs.roundingError();
        double rewarded = error * reward[offer.order] / Math.max(1e-9, offer.costs.landedOfWhole());
        return error * money[offer.period] + (reward[offer.order] == 0 ? 0 : rewarded);
    }

    /** Whether a line never counts for less when it gets longer at the same price. */
    private boolean rises(PackChoice offer) {
        return reward[offer.order] <= money[offer.period] * offer.costs.landedOfWhole();
    }
}
