package perkilo.purchasing.search;

import perkilo.purchasing.Payments;

/** The prices that replace the rules that tie items together (Lagrange multipliers). */
final class Multipliers {
    /** By link: what an item pays towards opening the order. */
    final double[] use;
    /** By order: the value of reaching the whole minimum order value. */
    final double[] minimum;
    /** By limit, then in total: the value of a unit of money beyond the unit itself. */
    final double[] cash;

    private final Orders orders;

    private Multipliers(Orders orders, double[] use, double[] minimum, double[] cash) {
        this.orders = orders;
        this.use = use;
        this.minimum = minimum;
        this.cash = cash;
    }

    /** The first prices: each opening is shared evenly among the items of its order; other prices are zero. */
    static Multipliers start(SearchMarket market) {
        double[] use = new double[market.links.size()];
        for (Link link : market.links) {
            use[link.id()] = market.orders.opening[link.order()]
                    / market.linksOf.get(link.order()).size();
        }
        return new Multipliers(market.orders, use, new double[market.orders.count], new double[market.cash.length]);
    }

    Multipliers copy() {
        return new Multipliers(orders, use.clone(), minimum.clone(), cash.clone());
    }

    void takeFrom(Multipliers other) {
        System.arraycopy(other.use, 0, use, 0, use.length);
        System.arraycopy(other.minimum, 0, minimum, 0, minimum.length);
        System.arraycopy(other.cash, 0, cash, 0, cash.length);
    }

    /** Moves each price a share of the way to another. */
    void moveTowards(Multipliers other, double share) {
        moveTowards(use, other.use, share);
        moveTowards(minimum, other.minimum, share);
        moveTowards(cash, other.cash, share);
    }

    private static void moveTowards(double[] prices, double[] others, double share) {
        for (int i = 0; i < prices.length; i++) {
            prices[i] += share * (others[i] - prices[i]);
        }
    }

    /** The weight of a unit of money paid for an order. */
    double money(int order) {
        return weight(order, false);
    }

    /** The weight of a unit of duty on an order. */
    double dutyMoney(int order) {
        return weight(order, true);
    }

    private double weight(int order, boolean duty) {
        double weight = 1 + cash[cash.length - 1];
        if (orders.limitsCash()) {
            for (Payments.Part part : orders.payments(order)) {
                weight += cash[part.limit()] * (duty ? part.duty() : part.invoiced()).doubleValue();
            }
        }
        return weight;
    }
}
