package perkilo.purchasing.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * One evaluation of the bound: every item is planned on its own at the prices of the multipliers, and every order is
 * placed or not, as its reduced cost says.
 *
 * <p>The multipliers are λ (use of an order), μ (minimum order value) and ν (cash). The bound is the sum of the items'
 * least totals with charge λ, reward μ and money weighed by 1 + ν; plus, for each order, the cost of opening it and of
 * its minimum less the λ paid towards it, if that is negative or the order is decided on; less ν times the limits.
 */
final class Relaxation {
    final SearchMarket market;
    final ItemPlans plans;
    final Terms terms;
    /** By item: its plan. */
    final Picks[] picks;
    /** By link: whether the item is in the order. */
    final boolean[] used;
    /** By order: the share of the minimum order value that the items' goods reach. */
    final double[] share;
    /** By limit on cash: what counts towards it of the items' lines. */
    final double[] paid;
    /** By item: its least total. */
    final double[] totals;
    /** The duty on the charges of mixed orders. */
    final MixedDuty duty;
    /** By order: the cost of placing it less what is paid towards it. */
    final double[] reducedCost;

    /**
     * The bound of a market.
     *
     * @param plans the least totals of the items; if they are above the least, the bound is only a guess
     */
    Relaxation(SearchMarket market, ItemPlans plans, MixedDuty duty) {
        this.market = market;
        this.duty = duty;
        totals = new double[market.items.size()];
        this.plans = plans;
        terms = new Terms(market);
        picks = new Picks[market.items.size()];
        Arrays.fill(picks, Picks.NOTHING);
        used = new boolean[market.links.size()];
        share = new double[market.orders.count];
        paid = new double[market.orders.limits];
        reducedCost = new double[market.orders.count];
    }

    /**
     * The bound at the multipliers.
     *
     * @return infinite if the decisions leave an item without a plan
     */
    double at(Multipliers prices, Decisions decisions) {
        setTerms(prices, decisions);
        Arrays.fill(used, false);
        Arrays.fill(share, 0);
        Arrays.fill(paid, 0);
        double bound = market.constant;
        for (int i = 0; i < picks.length; i++) {
            double total = plans.solve(i, terms);
            if (total == Double.POSITIVE_INFINITY) {
                return total;
            }
            bound += total;
            totals[i] = total;
            picks[i] = plans.picks(i, terms);
            count(picks[i]);
        }
        return bound + orders(prices, decisions) - cash(prices);
    }

    private void setTerms(Multipliers prices, Decisions decisions) {
        for (Link link : market.links) {
            boolean closed = decisions.placed[link.order()] == Decisions.NO;
            terms.charge[link.id()] = closed ? Double.POSITIVE_INFINITY : prices.use[link.id()];
        }
        System.arraycopy(prices.minimum, 0, terms.reward, 0, terms.reward.length);
        for (int j = 0; market.limitsCash() && j < reducedCost.length; j++) {
            terms.money[j] = prices.money(j);
            terms.dutyMoney[j] = prices.dutyMoney(j) - prices.money(j);
        }
        decisions.limit(terms, market);
        if (duty.isAny()) {
            duty.enclose(decisions, terms);
            duty.charge(decisions, terms);
        }
    }

    /** Puts the tangents of mixed orders where a plan is. */
    void touch(Decisions decisions, @Nullable JointPlan plan) {
        if (duty.isAny()) {
            decisions.limit(terms, market);
            duty.enclose(decisions, terms);
            duty.touch(decisions, plan);
        }
    }

    private void count(Picks plan) {
        for (int l = 0; l < plan.lines(); l++) {
            PackChoice offer = market.offers.get(plan.offer(l));
            used[market.linkOf.get(offer.id).id()] = true;
            share[offer.order] += offer.costs.share(plan.steps(l));
            if (market.limitsCash()) {
                long steps = plan.steps(l);
                market.orders.pay(offer.order, offer.costs.landed(steps), offer.costs.duties(steps), paid);
            }
        }
    }

    private double orders(Multipliers prices, Decisions decisions) {
        for (int j = 0; j < reducedCost.length; j++) {
            Orders orders = market.orders;
            reducedCost[j] = orders.opening[j]
                    + (prices.money(j) - 1) * orders.openingPaid[j]
                    + (prices.dutyMoney(j) - prices.money(j)) * orders.openingDuty[j]
                    + minimumCost(j, prices, decisions);
        }
        for (int j : duty.orders()) {
            reducedCost[j] += duty.least(j, decisions) * prices.dutyMoney(j);
        }
        for (Link link : market.links) {
            reducedCost[link.order()] -= prices.use[link.id()];
        }
        double sum = 0;
        for (int j = 0; j < reducedCost.length; j++) {
            if (isPlaced(j, decisions)) {
                sum += reducedCost[j];
            }
        }
        return sum;
    }

    private double minimumCost(int order, Multipliers prices, Decisions decisions) {
        if (!market.orders.hasMinimum(order)) {
            return 0;
        }
        double reward = prices.minimum[order];
        if (market.orders.refusesSmall(order) || decisions.small[order] == Decisions.NO) {
            return reward;
        }
        double charge = smallCharge(order, prices);
        return decisions.small[order] == Decisions.YES ? charge : Math.min(reward, charge);
    }

    private double smallCharge(int order, Multipliers prices) {
        return market.orders.smallCharge[order] * prices.money(order)
                + market.orders.smallDuty[order] * (prices.dutyMoney(order) - prices.money(order));
    }

    /** Whether the bound counts the order as placed. */
    boolean isPlaced(int order, Decisions decisions) {
        byte decided = decisions.placed[order];
        return decided == Decisions.YES || (decided == Decisions.OPEN_QUESTION && reducedCost[order] < 0);
    }

    /** Whether the bound counts the order as placed and large enough. */
    boolean isFull(int order, Multipliers prices, Decisions decisions) {
        if (!isPlaced(order, decisions) || decisions.small[order] == Decisions.YES) {
            return false;
        }
        double charge = smallCharge(order, prices);
        return market.orders.refusesSmall(order)
                || decisions.small[order] == Decisions.NO
                || prices.minimum[order] <= charge;
    }

    private double cash(Multipliers prices) {
        double sum = 0;
        for (int limit = 0; limit < market.cash.length; limit++) {
            if (prices.cash[limit] > 0) {
                sum += prices.cash[limit] * market.cash[limit];
            }
        }
        return sum;
    }

    /** By limit on cash: what is paid out in the bound's plan, with the orders it counts as placed. */
    double[] paid(Multipliers prices, Decisions decisions) {
        double[] sum = paid.clone();
        Orders orders = market.orders;
        for (int j = 0; j < reducedCost.length; j++) {
            if (isPlaced(j, decisions)) {
                boolean small = orders.chargesSmall(j) && !isFull(j, prices, decisions);
                double charge = orders.openingPaid[j] + (small ? orders.smallCharge[j] : 0);
                orders.pay(j, charge, orders.openingDuty[j] + (small ? orders.smallDuty[j] : 0), sum);
            }
        }
        return sum;
    }

    JointPlan joint() {
        return new JointPlan(market, picks.clone());
    }
}
