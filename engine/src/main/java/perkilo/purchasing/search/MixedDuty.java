package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The duty on the charges of mixed orders in the bound, beyond that at the lowest rate.
 *
 * <p>An order with charges K, goods G and average rate r pays K · r. Neither r nor G belongs to one item. So an order
 * gets a <em>tangent</em> at the goods G* and the rate r* of a known plan: a line with goods g and rate d pays K · (d −
 * r*) · g / G*, and the order pays what is left, K · (r − (r − r*) · G / G*), at the least over all r and G that the
 * decided lengths of its lines allow. That least value lies at a corner of the box of r and G. Without a tangent the
 * order pays K times the lowest r.
 */
final class MixedDuty {
    private final SearchMarket market;
    /** The mixed orders. */
    private final int[] orders;
    /** By order: its offers, those with the lowest rate first; empty if it is not mixed. */
    private final List<List<PackChoice>> byRate = new ArrayList<>();
    /** By order: the goods at the tangent; zero without a tangent. */
    private final double[] goods;
    /** By order: the average rate at the tangent. */
    private final double[] rate;

    private final double[] lowestRate;
    private final double[] highestRate;
    private final double[] lowestGoods;
    private final double[] highestGoods;
    private @Nullable Object enclosed;
    private boolean isEnclosed;

    MixedDuty(SearchMarket market) {
        this.market = market;
        int count = market.orders.anyMixed() ? market.orders.count : 0;
        goods = new double[count];
        rate = new double[count];
        lowestRate = new double[count];
        highestRate = new double[count];
        lowestGoods = new double[count];
        highestGoods = new double[count];
        List<Integer> mixed = new ArrayList<>();
        for (int j = 0; j < count; j++) {
            List<PackChoice> offers = new ArrayList<>();
            if (market.orders.isMixed(j) && !market.linksOf.get(j).isEmpty()) {
                mixed.add(j);
                market.linksOf.get(j).forEach(link -> offers.addAll(link.offers()));
                offers.sort(Comparator.comparingDouble(offer -> offer.costs.duty));
            }
            byRate.add(offers);
        }
        orders = mixed.stream().mapToInt(order -> order).toArray();
    }

    /** The orders whose lines may have several rates. */
    int[] orders() {
        return orders;
    }

    /** Whether there is such an order. */
    boolean isAny() {
        return orders.length > 0;
    }

    /** Finds the averages and goods that the decided lengths allow; the terms hold these lengths. */
    void enclose(Decisions decisions, Terms terms) {
        Object ranges = decisions.ranges();
        if (isEnclosed && ranges == enclosed) {
            return;
        }
        isEnclosed = true;
        enclosed = ranges;
        for (int j : orders) {
            enclose(j, terms);
        }
    }

    private void enclose(int order, Terms terms) {
        List<PackChoice> offers = byRate.get(order);
        int count = offers.size();
        double[] least = new double[count];
        double[] most = new double[count];
        lowestGoods[order] = 0;
        highestGoods[order] = 0;
        double weighted = 0;
        for (int o = 0; o < count; o++) {
            PackChoice offer = offers.get(o);
            LineCosts costs = offer.costs;
            least[o] = costs.leastGoods(terms.atLeast[offer.id], terms.atMost[offer.id]);
            most[o] = costs.mostGoods(terms.atLeast[offer.id], terms.atMost[offer.id]);
            lowestGoods[order] += least[o];
            highestGoods[order] += most[o];
            weighted += costs.duty * least[o];
        }
        lowestRate[order] = extreme(order, terms, least, most, weighted, true);
        highestRate[order] = extreme(order, terms, least, most, weighted, false);
    }

    /** The lowest or the highest average: as much as possible of what moves it there, as little of the rest. */
    private double extreme(int order, Terms terms, double[] least, double[] most, double weighted, boolean lowest) {
        List<PackChoice> offers = byRate.get(order);
        double value = lowestGoods[order];
        double sum = weighted;
        for (int i = 0; i < offers.size(); i++) {
            int o = lowest ? i : offers.size() - 1 - i;
            PackChoice offer = offers.get(o);
            if (terms.atMost[offer.id] == 0) {
                continue;
            }
            double duty = offer.costs.duty;
            if (value == 0) {
                return duty;
            }
            if (lowest ? duty * value >= sum : duty * value <= sum) {
                break;
            }
            value += most[o] - least[o];
            sum += duty * (most[o] - least[o]);
        }
        return value == 0 ? market.orders.duty[order].lowest().doubleValue() : sum / value;
    }

    /** Puts tangents at the orders of a plan, where that promises a higher bound. */
    void touch(Decisions decisions, @Nullable JointPlan plan) {
        Arrays.fill(goods, 0);
        for (int j : orders) {
            if (plan == null || !plan.placed(j) || decisions.placed[j] == Decisions.NO) {
                continue;
            }
            AverageDuty there = plan.duty(j);
            if (there.goods() == 0) {
                continue;
            }
            goods[j] = there.goods();
            rate[j] = there.rate();
            double lost = there.rate() - corner(j);
            if (lost >= there.rate() - lowestRate[j]) {
                goods[j] = 0;
            }
        }
    }

    /** Writes what the lines pay into the terms. */
    void charge(Decisions decisions, Terms terms) {
        for (int j : orders) {
            double weight = terms.money[j] + terms.dutyMoney[j];
            double perRate = goods[j] == 0 ? 0 : dutiable(j, decisions) * weight / goods[j];
            for (PackChoice offer : byRate.get(j)) {
                terms.perGoods[offer.id] = perRate == 0 ? 0 : perRate * (offer.costs.duty - rate[j]);
            }
        }
    }

    /** The least that an order pays beyond the duty at its lowest rate and what its lines pay. */
    double least(int order, Decisions decisions) {
        double rest = goods[order] == 0 ? lowestRate[order] : corner(order);
        return dutiable(order, decisions)
                * (rest - market.orders.duty[order].lowest().doubleValue());
    }

    /** How much a plan's order pays beyond what the bound counts. */
    double missing(int order, Decisions decisions, AverageDuty there) {
        double counted = goods[order] == 0
                ? lowestRate[order]
                : corner(order) + (there.rate() - rate[order]) * there.goods() / goods[order];
        return dutiable(order, decisions) * (there.rate() - counted);
    }

    /** The part of the charges that certainly pays duty: the small-order charge only if it was decided on. */
    private double dutiable(int order, Decisions decisions) {
        Orders all = market.orders;
        boolean small = decisions.small[order] == Decisions.YES;
        return all.dutiableOpening[order] + (small ? all.dutiableSmall[order] : 0);
    }

    /** The least of r − (r − r*) · G / G* over the box. */
    private double corner(int order) {
        double low = lowestGoods[order] / goods[order];
        double high = highestGoods[order] / goods[order];
        return Math.min(
                Math.min(rest(order, lowestRate[order], low), rest(order, lowestRate[order], high)),
                Math.min(rest(order, highestRate[order], low), rest(order, highestRate[order], high)));
    }

    private double rest(int order, double average, double share) {
        return average - (average - rate[order]) * share;
    }
}
