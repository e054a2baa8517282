package perkilo.purchasing.search;

import org.jspecify.annotations.Nullable;

/**
 * Repairs a plan that is below a minimum order value or above a limit on cash.
 *
 * <p>An order far below its minimum is given up. If it is nearer, the goods in it are rewarded more and more until the
 * items bring enough there; if they never do, the order is given up too.
 */
final class Repair {
    private static final int ROUNDS = 25;
    private static final double FAR = 0.6;
    private static final double FIRST_REWARD = 0.04;
    private static final double MORE = 1.8;
    private static final double MOST_REWARD = 5;
    /** The highest cost of a plan that is worth repairing, as a multiple of the best plan. */
    private static final double HOPELESS = 1.15;

    private final Planning planning;
    private final SearchMarket market;
    private double[] fairRewards;

    Repair(Planning planning) {
        this.planning = planning;
        market = planning.market;
        fairRewards = new double[market.orders.count];
    }

    /** Plans every item within the orders, and tries the result, repaired if necessary. */
    void tryOrders(boolean[] orders) {
        Terms terms = planning.within(orders);
        Picks[] picks = new Picks[planning.items()];
        for (int i = 0; i < picks.length; i++) {
            Picks plan = planning.within(i, terms);
            if (plan == null) {
                return;
            }
            picks[i] = plan;
        }
        tryPlan(picks, terms);
    }

    /**
     * Tries a plan, repaired if necessary.
     *
     * @param picks by item; changed on the way
     * @param terms the terms that the items were planned with; changed on the way
     */
    void tryPlan(Picks[] picks, Terms terms) {
        for (int round = 0; round < ROUNDS; round++) {
            JointPlan plan = new JointPlan(market, picks.clone());
            if (plan.total() > HOPELESS * planning.incumbent.total()) {
                return;
            }
            int worst = furthestBelowMinimum(plan);
            if (worst < 0) {
                planning.incumbent.offer(plan);
                if (plan.keepsLimits() || !save(plan, picks, terms)) {
                    return;
                }
            } else if (!mend(worst, plan.shareOfRefused(worst), round, picks, terms)) {
                return;
            }
        }
    }

    private int furthestBelowMinimum(JointPlan plan) {
        int worst = -1;
        double least = 1;
        for (int j = 0; j < market.orders.count; j++) {
            double share = plan.shareOfRefused(j);
            if (share < least) {
                least = share;
                worst = j;
            }
        }
        return worst;
    }

    private boolean mend(int order, double share, int round, Picks[] picks, Terms terms) {
        double minimum = market.orders.minimum[order];
        double reward = nextReward(order, terms.reward[order]);
        if ((share < FAR && round < ROUNDS - 5) || reward > MOST_REWARD * minimum) {
            for (Link link : market.linksOf.get(order)) {
                terms.charge[link.id()] = Double.POSITIVE_INFINITY;
            }
        } else {
            terms.reward[order] = reward;
        }
        for (Link link : market.linksOf.get(order)) {
            if (!replan(link.item(), picks, terms)) {
                return false;
            }
        }
        return true;
    }

    /** The next reward: first a little above that of the bound, then further and further above. */
    private double nextReward(int order, double reward) {
        double fair = fairRewards[order];
        if (fair == 0) {
            return reward == 0 ? FIRST_REWARD * market.orders.minimum[order] : MORE * reward;
        }
        return reward <= fair ? 1.02 * fair : fair + 2 * (reward - fair);
    }

    /** Takes over the known values of reaching the minimum of each order. */
    void learn(double[] rewards) {
        fairRewards = rewards.clone();
    }

    /** Makes money dearer for the orders whose payments count towards a limit that is exceeded. */
    private boolean save(JointPlan plan, Picks[] picks, Terms terms) {
        boolean inAll = plan.overLimit(market.orders.limits) > 0;
        for (int j = 0; j < market.orders.count; j++) {
            boolean over = market.orders.payments(j).stream().anyMatch(part -> plan.overLimit(part.limit()) > 0);
            if (over || inAll) {
                terms.money[j] *= 1.3;
            }
        }
        for (int i = 0; i < picks.length; i++) {
            if (!replan(i, picks, terms)) {
                return false;
            }
        }
        return true;
    }

    private boolean replan(int item, Picks[] picks, Terms terms) {
        @Nullable Picks plan = planning.within(item, terms);
        if (plan == null) {
            return false;
        }
        picks[item] = plan;
        return true;
    }
}
