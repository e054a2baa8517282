package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the question about the average rate of duty of a mixed order: how long one of its lines is.
 *
 * <p>First it narrows the lengths: a length whose item alone lifts the bound above the best plan is left out. Often
 * that decides all lines of an order, and with them its rate.
 */
final class DutyQuestions {
    private static final Node[] NONE = {};
    /** Duty that is missing in the bound and is less than this, in home currency, is no question. */
    private static final double SETTLED = 1e-5;

    private final Planning planning;
    private final SearchMarket market;
    private final Ascent ascent;
    private final MixedDuty duty;
    /** Mixed orders of the node last looked at whose duty the bound does not count in full. */
    private final List<Integer> unsettled = new ArrayList<>();
    /** The one of them that most is missing of. */
    private int worst;
    /** The duty that the bound does not count. */
    private double missing;
    /** What is between the bound and the best plan. */
    private double gap;

    DutyQuestions(Planning planning, Ascent ascent) {
        this.planning = planning;
        this.market = planning.market;
        this.ascent = ascent;
        duty = ascent.relaxation.duty;
    }

    /**
     * The node with fewer lengths left for the lines of mixed orders.
     *
     * @param part of the gap that duty which the bound does not count has to make up
     * @return null if no length can be left out, or if the duty makes up less
     */
    @Nullable Node narrow(Node node, double part) {
        if (!look(node) || missing < part * gap) {
            return null;
        }
        Decisions narrower = narrow(node.decisions);
        return narrower.ranges() == node.decisions.ranges() ? null : node.child(narrower);
    }

    /**
     * The parts of the node; none if the bound counts the duty that its plan pays.
     *
     * @param part of the gap that duty which the bound does not count has to make up
     */
    Node[] split(Node node, double part) {
        return look(node) && missing >= part * gap ? halves(node, worst) : NONE;
    }

    /** Compares what the bound counts with what its plan pays; false if all open lines are counted in full. */
    private boolean look(Node node) {
        if (!duty.isAny()) {
            return false;
        }
        Relaxation relaxation = ascent.relaxation;
        double bound = relaxation.at(node.prices, node.decisions);
        if (bound == Double.POSITIVE_INFINITY) {
            return false;
        }
        gap = ascent.cutoff() - bound;
        JointPlan plan = relaxation.joint();
        unsettled.clear();
        worst = -1;
        missing = 0;
        double most = SETTLED;
        for (int j : duty.orders()) {
            double here = plan.placed(j) ? duty.missing(j, node.decisions, plan.duty(j)) : 0;
            missing += here;
            if (here > SETTLED && isOpen(j, relaxation.terms)) {
                unsettled.add(j);
                worst = here > most ? j : worst;
                most = Math.max(most, here);
            }
        }
        return worst >= 0;
    }

    private boolean isOpen(int order, Terms terms) {
        for (Link link : market.linksOf.get(order)) {
            for (PackChoice offer : link.offers()) {
                if (terms.atLeast[offer.id] < terms.atMost[offer.id]) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Leaves out lengths, longer or shorter than now, that lift the bound above the best plan. */
    private Decisions narrow(Decisions decisions) {
        Decisions narrower = decisions;
        Terms terms = ascent.relaxation.terms;
        for (int j : unsettled) {
            for (Link link : market.linksOf.get(j)) {
                for (PackChoice offer : link.offers()) {
                    long least = terms.atLeast[offer.id];
                    long most = terms.atMost[offer.id];
                    long now = steps(offer);
                    if (least == most) {
                        continue;
                    }
                    long from = now > least && isOut(offer, least, now - 1) ? now : least;
                    long to = now < most && isOut(offer, now + 1, most) ? now : most;
                    if (from > least || to < most) {
                        narrower = narrower.withRange(offer.id, from, to);
                    }
                }
            }
        }
        return narrower;
    }

    /** Whether no better plan has a line of these lengths. */
    private boolean isOut(PackChoice offer, long from, long to) {
        Terms terms = ascent.relaxation.terms;
        int item = market.linkOf.get(offer.id).item();
        long least = terms.atLeast[offer.id];
        long most = terms.atMost[offer.id];
        int forced = terms.forcedLines[item];
        terms.atLeast[offer.id] = from;
        terms.atMost[offer.id] = to;
        terms.forcedLines[item] += (from > 0 ? 1 : 0) - (least > 0 ? 1 : 0);
        double total = planning.solve(item, terms);
        terms.atLeast[offer.id] = least;
        terms.atMost[offer.id] = most;
        terms.forcedLines[item] = forced;
        return total - ascent.relaxation.totals[item] >= gap;
    }

    private long steps(PackChoice offer) {
        Picks picks = ascent.relaxation.picks[market.linkOf.get(offer.id).item()];
        for (int l = 0; l < picks.lines(); l++) {
            if (picks.offer(l) == offer.id) {
                return picks.steps(l);
            }
        }
        return 0;
    }

    /** Splits on the open line of an order whose goods can change its average rate most. */
    private Node[] halves(Node node, int order) {
        Terms terms = ascent.relaxation.terms;
        double average = ascent.relaxation.joint().duty(order).rate();
        PackChoice found = null;
        double most = -1;
        for (Link link : market.linksOf.get(order)) {
            for (PackChoice offer : link.offers()) {
                long from = terms.atLeast[offer.id];
                long to = terms.atMost[offer.id];
                double span = offer.costs.mostGoods(from, to) - offer.costs.leastGoods(from, to);
                double effect = span * (Math.abs(offer.costs.duty - average) + 1e-6);
                if (from < to && effect > most) {
                    most = effect;
                    found = offer;
                }
            }
        }
        if (found == null) {
            return NONE;
        }
        long least = terms.atLeast[found.id];
        long last = terms.atMost[found.id];
        long now = steps(found);
        long middle = Math.max(least, Math.min(last - 1, now > least ? now - 1 : now));
        return new Node[] {
            node.child(node.decisions.withRange(found.id, least, middle)),
            node.child(node.decisions.withRange(found.id, middle + 1, last))
        };
    }
}
