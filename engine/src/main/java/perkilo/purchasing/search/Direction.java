package perkilo.purchasing.search;

/** The direction in which prices move: the broken rules of the newest evaluation, mixed with the direction before. */
final class Direction {
    private static final double NEWEST = 0.6;
    /** The highest price of a minimum order value, as a multiple of that value. */
    private static final double HIGHEST_REWARD = 3;

    private final SearchMarket market;
    private final Orders orders;
    private final double[] use;
    private final double[] minimum;
    private final double[] cash;
    private double norm;

    Direction(SearchMarket market) {
        this.market = market;
        orders = market.orders;
        use = new double[market.links.size()];
        minimum = new double[orders.count];
        cash = new double[market.cash.length];
    }

    /**
     * Takes in a new evaluation at the given prices.
     *
     * @return the square of the direction's length
     */
    double turn(Relaxation at, Decisions decisions, Multipliers prices) {
        norm = 0;
        for (Link link : market.links) {
            int l = link.id();
            boolean closed = decisions.placed[link.order()] == Decisions.NO;
            double broken = (at.used[l] ? 1 : 0) - (at.isPlaced(link.order(), decisions) ? 1 : 0);
            use[l] = closed ? 0 : mix(broken, use[l], prices.use[l]);
        }
        for (int j = 0; j < minimum.length; j++) {
            if (counts(j, decisions)) {
                double broken = (at.isFull(j, prices, decisions) ? 1 : 0) - at.share[j];
                minimum[j] = mix(broken, minimum[j], prices.minimum[j]);
            } else {
                minimum[j] = 0;
            }
        }
        turnCash(at, decisions, prices);
        return norm;
    }

    private void turnCash(Relaxation at, Decisions decisions, Multipliers prices) {
        if (!market.limitsCash()) {
            return;
        }
        double all = 0;
        double[] paid = at.paid(prices, decisions);
        for (int limit = 0; limit < paid.length; limit++) {
            all += paid[limit];
            turnCash(limit, paid[limit], prices);
        }
        turnCash(paid.length, all, prices);
    }

    /** Turns the prices of cash; money is measured as a share of its limit. */
    private void turnCash(int limit, double paid, Multipliers prices) {
        double most = market.cash[limit];
        if (most < Double.POSITIVE_INFINITY) {
            cash[limit] = mix(paid / Math.max(1, most) - 1, cash[limit], prices.cash[limit]);
        }
    }

    private double mix(double broken, double before, double price) {
        double mixed = NEWEST * broken + (1 - NEWEST) * before;
        if (price <= 0 && mixed < 0) {
            return 0;
        }
        norm += mixed * mixed;
        return mixed;
    }

    /** Whether the minimum of the order can have a price. */
    private boolean counts(int order, Decisions decisions) {
        return orders.hasMinimum(order)
                && decisions.placed[order] != Decisions.NO
                && decisions.small[order] != Decisions.YES;
    }

    void move(Multipliers prices, Decisions decisions, double length) {
        for (int l = 0; l < use.length; l++) {
            prices.use[l] = Math.max(0, prices.use[l] + length * use[l]);
        }
        for (int j = 0; j < minimum.length; j++) {
            double moved = prices.minimum[j] + length * minimum[j];
            prices.minimum[j] = Math.min(mostReward(j, decisions), Math.max(0, moved));
        }
        for (int limit = 0; limit < cash.length; limit++) {
            double inHome = Math.max(1, market.cash[limit]);
            prices.cash[limit] = Math.max(0, prices.cash[limit] + length * cash[limit] / inHome);
        }
    }

    private double mostReward(int order, Decisions decisions) {
        if (!counts(order, decisions)) {
            return 0;
        }
        boolean mustBeFull = orders.refusesSmall(order) || decisions.small[order] == Decisions.NO;
        double charge = orders.smallCharge[order];
        return mustBeFull ? Math.max(charge, HIGHEST_REWARD * orders.minimum[order]) : charge;
    }
}
