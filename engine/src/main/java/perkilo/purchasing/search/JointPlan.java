package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.List;
import perkilo.purchasing.PurchasePlan;

/** The purchases of all items together, and the orders that they make up. */
final class JointPlan {
    /** The share of a minimum or a limit that the rounding of doubles alone may cause to be missed or exceeded. */
    static final double SLACK = 1e-9;

    final Picks[] picks;

    private final SearchMarket market;
    /** By order: whether it has lines. */
    private final boolean[] placed;
    /** By order: how much of the minimum order value its goods make up. */
    private final double[] share;
    /** By limit on cash, then in all: what is paid out. */
    private final double[] paid;

    /** By order: the rates of duty of its lines; empty if no order is mixed. */
    private final AverageDuty[] duty;

    private double total;

    JointPlan(SearchMarket market, Picks[] picks) {
        this.market = market;
        this.picks = picks;
        placed = new boolean[market.orders.count];
        share = new double[market.orders.count];
        paid = new double[market.cash.length];
        duty = market.orders.anyMixed() ? AverageDuty.of(market, picks) : new AverageDuty[0];
        sum();
    }

    private void sum() {
        total = market.constant;
        for (Picks item : picks) {
            total += item.cost;
            for (int l = 0; l < item.lines(); l++) {
                PackChoice offer = market.offers.get(item.offer(l));
                placed[offer.order] = true;
                share[offer.order] += offer.costs.share(item.steps(l));
                if (market.limitsCash()) {
                    long steps = item.steps(l);
                    market.orders.pay(offer.order, offer.costs.landed(steps), offer.costs.duties(steps), paid);
                }
            }
        }
        for (int j = 0; j < placed.length; j++) {
            if (placed[j]) {
                Orders orders = market.orders;
                double small = isSmall(j) ? orders.smallCharge[j] : 0;
                total += orders.opening[j] + small + extraDuty(j);
                if (market.limitsCash()) {
                    double duties = orders.openingDuty[j] + (isSmall(j) ? orders.smallDuty[j] : 0) + extraDuty(j);
                    orders.pay(j, orders.openingPaid[j] + small + extraDuty(j), duties, paid);
                }
            }
        }
        for (int limit = 0; limit < paid.length - 1; limit++) {
            paid[paid.length - 1] += paid[limit];
        }
    }

    /** The duty on an order's charges beyond that at its lowest rate. */
    private double extraDuty(int order) {
        if (!market.orders.isMixed(order)) {
            return 0;
        }
        double dutiable =
                market.orders.dutiableOpening[order] + (isSmall(order) ? market.orders.dutiableSmall[order] : 0);
        return dutiable
                * (duty[order].rate() - market.orders.duty[order].lowest().doubleValue());
    }

    /** The objective, in doubles. */
    double total() {
        return total;
    }

    boolean placed(int order) {
        return placed[order];
    }

    /** The rates of duty in a mixed order. */
    AverageDuty duty(int order) {
        return duty[order];
    }

    boolean[] placed() {
        return placed.clone();
    }

    private boolean isSmall(int order) {
        return market.orders.hasMinimum(order) && share[order] < 1 - SLACK;
    }

    /** The share of its minimum order value that a refused order reaches; one if the order is not refused. */
    double shareOfRefused(int order) {
        return placed[order] && market.orders.refusesSmall(order) && isSmall(order) ? share[order] : 1;
    }

    boolean keepsMinimums() {
        for (int j = 0; j < placed.length; j++) {
            if (shareOfRefused(j) < 1) {
                return false;
            }
        }
        return true;
    }

    /** By how much the plan exceeds a limit on cash, or on all. */
    double overLimit(int limit) {
        double most = market.cash[limit];
        return paid[limit] > most + SLACK * Math.max(1, most) ? paid[limit] - most : 0;
    }

    boolean keepsLimits() {
        for (int limit = 0; limit < paid.length; limit++) {
            if (overLimit(limit) > 0) {
                return false;
            }
        }
        return true;
    }

    boolean possible() {
        return keepsMinimums() && keepsLimits();
    }

    PurchasePlan plan() {
        List<PurchasePlan.Line> lines = new ArrayList<>();
        for (Picks item : picks) {
            for (int l = 0; l < item.lines(); l++) {
                lines.add(market.line(item, l));
            }
        }
        return new PurchasePlan(lines);
    }
}
