package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the question that splits a node: an order, a small order, a rate of duty, or the length of a line. */
final class Questions {
    /** How many orders are looked at more closely. */
    private static final int CANDIDATES = 8;
    /** Less disagreement than this counts as agreement. */
    private static final double AGREED = 0.02;
    /** If duty that the bound does not count makes up this part of the gap, its question comes before other lines. */
    private static final double MAIN_PART = 0.5;

    private final SearchMarket market;
    private final Ascent ascent;
    private final Averages averages;
    private final DutyQuestions rates;

    Questions(Planning planning, Ascent ascent) {
        this.market = planning.market;
        this.rates = new DutyQuestions(planning, ascent);
        this.ascent = ascent;
        this.averages = ascent.averages;
    }

    boolean anyOrderOpen(Decisions decisions) {
        for (int j = 0; j < market.orders.count; j++) {
            if (decisions.placed[j] == Decisions.OPEN_QUESTION
                    && !market.linksOf.get(j).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /**
     * The parts of the node; none if every line is decided, so that the node holds one plan alone.
     *
     * <p>What the items disagree about comes first: whether an order is placed, then whether it stays small, then what
     * rate of duty an order pays on its charges, then how long a line is.
     */
    Node[] split(Node node) {
        Node narrower = rates.narrow(node, MAIN_PART);
        if (narrower != null) {
            return new Node[] {narrower};
        }
        int order = unclearOrder(node);
        if (order >= 0) {
            return new Node[] {without(node, order), with(node, order)};
        }
        int small = unclearSmallOrder(node);
        if (small >= 0) {
            Node full = node.child(node.decisions.withSmall(small, Decisions.NO));
            Node charged = node.child(node.decisions.withSmall(small, Decisions.YES));
            charged.prices.minimum[small] = 0;
            return new Node[] {full, charged};
        }
        Node[] byRate = rates.split(node, MAIN_PART);
        if (byRate.length > 0) {
            return byRate;
        }
        Node[] parts = splitLine(node, Double.MIN_NORMAL);
        if (parts.length == 0) {
            byRate = rates.split(node, 0);
            if (byRate.length > 0) {
                return byRate;
            }
            int open = openOrder(node.decisions);
            return open >= 0 ? new Node[] {without(node, open), with(node, open)} : splitLine(node, 0);
        }
        return parts;
    }

    /** Makes an order free for every item, because it is placed anyway. */
    void freeUse(Node node, int order) {
        for (Link link : market.linksOf.get(order)) {
            node.prices.use[link.id()] = 0;
        }
    }

    /** Of the orders most in doubt, the one whose two answers promise to raise the bound most; −1 if there is none. */
    private int unclearOrder(Node node) {
        List<Integer> doubtful = new ArrayList<>();
        double[] doubt = new double[market.orders.count];
        for (int j = 0; j < market.orders.count; j++) {
            if (node.decisions.placed[j] == Decisions.OPEN_QUESTION
                    && !market.linksOf.get(j).isEmpty()) {
                doubt[j] = doubt(j);
                if (doubt[j] > 0) {
                    doubtful.add(j);
                }
            }
        }
        doubtful.sort(Comparator.comparingDouble((Integer j) -> -doubt[j]).thenComparingInt(j -> j));
        int found = -1;
        double most = -1;
        for (int j : doubtful.subList(0, Math.min(CANDIDATES, doubtful.size()))) {
            double promise = doubtful.size() == 1 ? 0 : promise(node, j);
            if (promise > most) {
                most = promise;
                found = j;
            }
        }
        return found;
    }

    /** How much both answers together promise to raise the bound. */
    private double promise(Node node, int order) {
        double product = 1;
        for (Node child : List.of(without(node, order), with(node, order))) {
            double gap = Math.max(1e-9, ascent.cutoff() - node.bound);
            double raised = Math.min(gap, ascent.promise(child, 0.25) - node.bound);
            product *= Math.max(raised, 1e-6 * gap);
        }
        return product;
    }

    private static Node without(Node node, int order) {
        Node without = node.child(node.decisions.withPlaced(order, Decisions.NO));
        without.prices.minimum[order] = 0;
        return without;
    }

    private Node with(Node node, int order) {
        Node with = node.child(node.decisions.withPlaced(order, Decisions.YES));
        freeUse(with, order);
        return with;
    }

    /** How far the items are from agreeing on an order; zero if they agree. */
    private double doubt(int order) {
        double use = mostUse(order);
        double split = Math.min(use, 1 - use);
        double scale = 1e-3 * market.orders.opening[order] + 1;
        return split < AGREED ? 0 : split + 0.3 / (1 + Math.abs(ascent.reducedCost()[order]) / scale);
    }

    private double mostUse(int order) {
        double use = 0;
        for (Link link : market.linksOf.get(order)) {
            use = Math.max(use, averages.use(link.id()));
        }
        return use;
    }

    /** An order that is not decided although the items agree on it; −1 for none. */
    private int openOrder(Decisions decisions) {
        int found = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < market.orders.count; j++) {
            double cost = Math.abs(ascent.reducedCost()[j]);
            if (decisions.placed[j] == Decisions.OPEN_QUESTION
                    && !market.linksOf.get(j).isEmpty()
                    && cost < least) {
                least = cost;
                found = j;
            }
        }
        return found;
    }

    private int unclearSmallOrder(Node node) {
        int found = -1;
        double most = 0;
        for (int j = 0; j < market.orders.count; j++) {
            boolean priced = node.prices.minimum[j] > 1e-9;
            if (node.decisions.placed[j] == Decisions.YES
                    && market.orders.chargesSmall(j)
                    && node.decisions.small[j] == Decisions.OPEN_QUESTION
                    && priced
                    && market.orders.smallCharge[j] > most) {
                most = market.orders.smallCharge[j];
                found = j;
            }
        }
        return found;
    }

    /** Splits on the line whose length is most in doubt, by at least {@code leastDoubt}; none if all are decided. */
    private Node[] splitLine(Node node, double leastDoubt) {
        Terms terms = new Terms(market);
        node.decisions.limit(terms, market);
        int found = -1;
        double most = leastDoubt;
        for (PackChoice offer : market.offers) {
            boolean open = terms.atLeast[offer.id] < terms.atMost[offer.id]
                    && node.decisions.placed[offer.order] != Decisions.NO;
            double weight = offer.costs.landed(Math.max(offer.costs.fewestSteps, 1));
            double doubt = averages.variance(offer.id) * weight * weight;
            if (open && (doubt > most || (found < 0 && doubt >= leastDoubt))) {
                most = doubt;
                found = offer.id;
            }
        }
        if (found < 0) {
            return new Node[0];
        }
        long least = terms.atLeast[found];
        long last = terms.atMost[found];
        long middle = Math.min(last - 1, Math.max(least, (long) Math.floor(averages.steps(found) + 1e-9)));
        return new Node[] {
            node.child(node.decisions.withRange(found, least, middle)),
            node.child(node.decisions.withRange(found, middle + 1, last))
        };
    }
}
