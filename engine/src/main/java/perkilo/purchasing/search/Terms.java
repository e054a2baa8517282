package perkilo.purchasing.search;

import java.util.Arrays;

/**
 * The charges and rewards of an item, besides the cost of its lines, while it is planned on its own.
 *
 * <p>Charges are for the orders that it needs, rewards for what its goods add to minimum order values, and the price of
 * cash for what its lines take from a limited budget.
 */
final class Terms {
    /** By link: the charge for being in the order; infinite if the item may not be in it. */
    final double[] charge;
    /** By order: the reward for reaching the whole minimum order value. */
    final double[] reward;
    /** By offer: the charge for each unit of goods in home currency; below zero for a reward. */
    final double[] perGoods;
    /** By order: the weight of one unit of money paid for it; one if cash is not limited. */
    final double[] money;
    /** By order: by how much the weight of one unit of duty is above that of other money. */
    final double[] dutyMoney;
    /** By offer: the fewest steps that have to be bought; zero if none have to. */
    final long[] atLeast;
    /** By item: the number of offers that have to be bought from. */
    final int[] forcedLines;
    /** By offer: the most steps that may be bought. */
    final long[] atMost;

    Terms(SearchMarket market) {
        charge = new double[market.links.size()];
        reward = new double[market.orders.count];
        perGoods = new double[market.offers.size()];
        money = new double[market.orders.count];
        Arrays.fill(money, 1);
        dutyMoney = new double[market.orders.count];
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

    /** Whether the item may not be in the order, or would only serve a minimum that has no price. */
    boolean pointless(Link link) {
        return charge[link.id()] == Double.POSITIVE_INFINITY
                || (reward[link.order()] == 0 && !link.covers() && !link.mayLowerDuty());
    }

    /** Whether the terms leave the cost of the offer's lines unchanged. */
    boolean plain(PackChoice offer) {
        return reward[offer.order] == 0
                && perGoods[offer.id] == 0
                && money[offer.order] == 1
                && dutyMoney[offer.order] == 0
                && atLeast[offer.id] == 0
                && atMost[offer.id] == offer.mostSteps;
    }

    /** The cost of a line of the offer under these terms. */
    double cost(PackChoice offer, long steps) {
        double landed = offer.costs.landed(steps);
        if (landed == Double.POSITIVE_INFINITY) {
            return landed;
        }
        double cost =
                offer.cost(steps) + (money[offer.order] - 1) * landed - reward[offer.order] * offer.costs.share(steps);
        cost += dutyMoney[offer.order] == 0 ? 0 : dutyMoney[offer.order] * offer.costs.duties(steps);
        return perGoods[offer.id] == 0 ? cost : cost + perGoods[offer.id] * offer.costs.goodsAtHome(steps);
    }

    /** The line of {@code fewest} to {@code most} steps with the least cost; the shortest of equals. */
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

    /** The most by which rounding changes the cost of a line under these terms. */
    double roundingError(PackChoice offer) {
        double error = offer.costs.roundingError();
        double rewarded = error * reward[offer.order] / Math.max(1e-9, offer.costs.landedOfWhole());
        double charged = perGoods[offer.id] == 0 ? 0 : Math.abs(perGoods[offer.id]) * offer.costs.roundingOfGoods();
        double duty = Math.abs(dutyMoney[offer.order]) * offer.costs.dutiesPerGoods() * offer.costs.roundingOfGoods();
        return error * money[offer.order] + duty + (reward[offer.order] == 0 ? 0 : rewarded) + charged;
    }

    /** Whether a longer line at the same price never costs less. */
    private boolean rises(PackChoice offer) {
        if (perGoods[offer.id] == 0 && dutyMoney[offer.order] == 0) {
            return reward[offer.order] <= money[offer.order] * offer.costs.landedOfWhole();
        }
        double rise = money[offer.order] * offer.costs.landedPerGoods()
                + dutyMoney[offer.order] * offer.costs.dutiesPerGoods()
                + perGoods[offer.id];
        return rise >= 0 && reward[offer.order] <= rise * offer.costs.goodsOfWhole();
    }
}
