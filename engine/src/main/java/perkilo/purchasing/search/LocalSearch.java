package perkilo.purchasing.search;

/** Improves the best plan by adding, removing or moving one order at a time, as long as that helps. */
final class LocalSearch {
    private static final double HELPS = 1e-6;

    private final Planning planning;
    private final SearchMarket market;
    private final Repair repair;
    private final Deadline deadline;

    LocalSearch(Planning planning, Repair repair, Deadline deadline) {
        this.planning = planning;
        this.market = planning.market;
        this.repair = repair;
        this.deadline = deadline;
    }

    void improve() {
        boolean helped = true;
        while (helped) {
            helped = false;
            for (int j = 0; j < market.orders.count; j++) {
                if (deadline.over()) {
                    return;
                }
                helped |= improveAt(j);
            }
        }
    }

    private boolean improveAt(int order) {
        JointPlan best = planning.incumbent.best();
        if (best == null || market.linksOf.get(order).isEmpty()) {
            return false;
        }
        double before = planning.incumbent.total();
        boolean[] orders = best.placed();
        orders[order] = !orders[order];
        tryChange(best, orders, order, order);
        if (!orders[order] && planning.incumbent.total() >= before - HELPS) {
            shift(best, order, -1);
            shift(best, order, 1);
        }
        return planning.incumbent.total() < before - HELPS;
    }

    private void shift(JointPlan best, int order, int by) {
        int period = market.orders.period(order) + by;
        if (period < 0 || period >= market.periods || best.placed(order + by)) {
            return;
        }
        boolean[] orders = best.placed();
        orders[order] = false;
        orders[order + by] = true;
        tryChange(best, orders, order, order + by);
    }

    /** Replans the items that two orders concern. */
    private void tryChange(JointPlan best, boolean[] orders, int first, int second) {
        Terms terms = planning.within(orders);
        Picks[] picks = best.picks.clone();
        for (Link link : market.linksOf.get(first)) {
            if (orders[first] || standsIn(picks[link.item()], first)) {
                if (!replan(link.item(), picks, terms)) {
                    return;
                }
            }
        }
        if (second != first) {
            for (Link link : market.linksOf.get(second)) {
                if (!replan(link.item(), picks, terms)) {
                    return;
                }
            }
        }
        repair.tryPlan(picks, terms);
    }

    private boolean standsIn(Picks picks, int order) {
        for (int l = 0; l < picks.lines(); l++) {
            if (market.offers.get(picks.offer(l)).order == order) {
                return true;
            }
        }
        return false;
    }

    private boolean replan(int item, Picks[] picks, Terms terms) {
        Picks plan = planning.within(item, terms);
        if (plan == null) {
            return false;
        }
        picks[item] = plan;
        return true;
    }
}
