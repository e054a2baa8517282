package perkilo.purchasing.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * Closes the gap between the best plan and the bound. It splits the plans by decisions, the part with the lowest bound
 * first, and leaves out every part whose bound shows that it holds no better plan.
 */
final class BranchAndBound {
    /** Parts that promise to save less than this, in home currency, are left out; well below half a minor unit. */
    private static final double TOLERANCE = 0.002;

    private final Planning planning;
    private final SearchMarket market;
    private final Incumbent incumbent;
    private final Deadline deadline;
    private final Ascent ascent;
    private final Questions questions;
    private final Repair repair;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.<Node>comparingDouble(node -> node.bound).thenComparingInt(node -> -node.depth));
    private double leftOut = Double.POSITIVE_INFINITY;

    BranchAndBound(Planning planning, Deadline deadline) {
        this.planning = planning;
        this.market = planning.market;
        this.incumbent = planning.incumbent;
        this.deadline = deadline;
        ascent = new Ascent(planning, deadline);
        questions = new Questions(planning, ascent);
        repair = new Repair(planning);
    }

    /** The bound from which on a part holds no better plan than the best one. */
    static double cutoff(Incumbent incumbent) {
        return incumbent.best() == null ? incumbent.ceiling() : incumbent.total() - TOLERANCE;
    }

    /**
     * Searches to the end, or to the deadline.
     *
     * @return no plan costs less than this; infinite if there is no plan
     */
    double search() {
        Node root =
                new Node(new Decisions(market.orders.count), Multipliers.start(market), Double.NEGATIVE_INFINITY, 0);
        LocalSearch local = new LocalSearch(planning, repair, deadline);
        repair.tryOrders(planning.allOrders());
        ascent.raise(root, 30, 1.2, step -> tryOrders(step));
        repair.learn(root.prices.minimum);
        local.improve();
        ascent.raise(root, 100, 0.8, step -> tryOrders(step));
        repair.learn(root.prices.minimum);
        local.improve();
        open.add(root);
        while (!open.isEmpty() && !deadline.over()) {
            Node node = open.poll();
            if (node.bound >= cutoff(incumbent)) {
                leaveOut(node);
                open.clear();
                break;
            }
            look(node);
        }
        double lowestOpen = open.isEmpty() ? Double.POSITIVE_INFINITY : open.peek().bound;
        return Math.max(market.floor(), Math.min(lowestOpen, Math.min(leftOut, incumbent.total())));
    }

    private void leaveOut(Node node) {
        if (incumbent.best() != null) {
            leftOut = Math.min(leftOut, node.bound);
        }
    }

    private void tryOrders(int step) {
        if (step % 4 != 0 && step >= 3) {
            return;
        }
        boolean[] orders = ascent.relaxation.joint().placed();
        repair.tryOrders(orders);
        JointPlan best = incumbent.best();
        if (best != null) {
            for (int j = 0; j < orders.length; j++) {
                orders[j] |= best.placed(j);
            }
            repair.tryOrders(orders);
        }
    }

    private void look(Node node) {
        boolean noPlanYet = incumbent.best() == null;
        double bound = ascent.raise(node, noPlanYet ? 25 : 8, noPlanYet ? 1 : 0.25, step -> {
            if (step == 0) {
                repair.tryOrders(ascent.relaxation.joint().placed());
            }
        });
        if (deadline.over()) {
            open.add(node);
            return;
        }
        if (node.bound >= cutoff(incumbent)) {
            leaveOut(node);
            return;
        }
        if (fixByReducedCost(node, bound) && !questions.anyOrderOpen(node.decisions)) {
            open.add(node);
            return;
        }
        open.addAll(Arrays.asList(questions.split(node)));
    }

    /**
     * Decides on orders whose reduced cost alone lifts the bound above the best plan.
     *
     * @return whether an order was decided to be placed
     */
    private boolean fixByReducedCost(Node node, double bound) {
        double gap = cutoff(incumbent) - bound;
        boolean placed = false;
        double[] reducedCost = ascent.reducedCost();
        byte[] decided = node.decisions.placed;
        for (int j = 0; j < decided.length; j++) {
            if (decided[j] == Decisions.OPEN_QUESTION) {
                if (reducedCost[j] > gap) {
                    decided[j] = Decisions.NO;
                } else if (-reducedCost[j] > gap) {
                    decided[j] = Decisions.YES;
                    questions.freeUse(node, j);
                    placed = true;
                }
            }
        }
        return placed;
    }
}
