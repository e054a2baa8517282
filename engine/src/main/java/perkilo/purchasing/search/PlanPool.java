package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The plans that every item made so far, so that a bound can be guessed without planning anew.
 *
 * <p>No known plan is cheaper than the cheapest of all, so a guess is never below the bound. A guess takes a small part
 * of the time of an exact evaluation, and shows where the next one is worth making.
 */
final class PlanPool implements ItemPlans {
    /** The most plans kept for an item; the least recently used are dropped first. */
    private static final int MOST = 120;

    private final SearchMarket market;
    private final List<List<Known>> known = new ArrayList<>();
    private int cheapest;
    private long clock;

    PlanPool(SearchMarket market) {
        this.market = market;
        for (int i = 0; i < market.items.size(); i++) {
            known.add(new ArrayList<>());
        }
    }

    /** A known plan, with the figures of its lines. */
    private final class Known {
        final Picks picks;
        final int[] links;
        final int[] orders;
        final double[] shares;
        final double[] paid;
        final double[] duties;
        final double[] goods;
        long used = clock;

        Known(Picks picks) {
            this.picks = picks;
            int lines = picks.lines();
            int[] found = new int[lines];
            orders = new int[lines];
            shares = new double[lines];
            duties = new double[market.limitsCash() ? lines : 0];
            paid = new double[lines];
            goods = new double[market.orders.anyMixed() ? lines : 0];
            int distinct = 0;
            for (int l = 0; l < lines; l++) {
                PackChoice offer = market.offers.get(picks.offer(l));
                int link = market.linkOf.get(offer.id).id();
                if (l == 0 || link != found[distinct - 1]) {
                    found[distinct++] = link;
                }
                orders[l] = offer.order;
                shares[l] = offer.costs.share(picks.steps(l));
                paid[l] = offer.costs.landed(picks.steps(l));
                if (duties.length > 0) {
                    duties[l] = offer.costs.duties(picks.steps(l));
                }
                if (goods.length > 0) {
                    goods[l] = offer.costs.goodsAtHome(picks.steps(l));
                }
            }
            links = Arrays.copyOf(found, distinct);
        }

        double total(Terms terms, int forcedLines, double atMost) {
            double sum = picks.cost;
            for (int l = 0; l < orders.length; l++) {
                sum += (terms.money[orders[l]] - 1) * paid[l] - terms.reward[orders[l]] * shares[l];
            }
            for (int l = 0; l < duties.length; l++) {
                sum += terms.dutyMoney[orders[l]] * duties[l];
            }
            for (int l = 0; l < goods.length; l++) {
                sum += terms.perGoods[picks.offer(l)] * goods[l];
            }
            for (int link : links) {
                sum += terms.charge[link];
            }
            return sum < atMost && keeps(terms, forcedLines) ? sum : Double.POSITIVE_INFINITY;
        }

        /** Whether the lines are as long as they have to be. */
        private boolean keeps(Terms terms, int forcedLines) {
            int forced = 0;
            for (int l = 0; l < orders.length; l++) {
                int offer = picks.offer(l);
                if (picks.steps(l) < terms.atLeast[offer] || picks.steps(l) > terms.atMost[offer]) {
                    return false;
                }
                forced += terms.atLeast[offer] > 0 ? 1 : 0;
            }
            return forced == forcedLines;
        }
    }

    /** Keeps the plans of an evaluation. */
    void add(Picks[] plans) {
        clock++;
        for (int i = 0; i < plans.length; i++) {
            add(known.get(i), plans[i]);
        }
    }

    private void add(List<Known> plans, Picks picks) {
        for (Known plan : plans) {
            if (plan.picks.sameAs(picks)) {
                plan.used = clock;
                return;
            }
        }
        if (plans.size() == MOST) {
            int oldest = 0;
            for (int p = 1; p < MOST; p++) {
                if (plans.get(p).used < plans.get(oldest).used) {
                    oldest = p;
                }
            }
            plans.remove(oldest);
        }
        plans.add(new Known(picks));
    }

    @Override
    public double solve(int item, Terms terms) {
        List<Known> plans = known.get(item);
        double least = Double.POSITIVE_INFINITY;
        for (int p = 0; p < plans.size(); p++) {
            double total = plans.get(p).total(terms, terms.forcedLines[item], least);
            if (total < least) {
                least = total;
                cheapest = p;
            }
        }
        return least;
    }

    @Override
    public Picks picks(int item, Terms terms) {
        Known plan = known.get(item).get(cheapest);
        plan.used = clock;
        return plan.picks;
    }
}
