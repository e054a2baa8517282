package perkilo.ordering;

/** Finds the question on which a node is split: an order, a small order, or how long a line is. */
final class Questions {
    private final Market market;
    private final Ascent ascent;
    private final Averages averages;

    Questions(Market market, Ascent ascent) {
        this.market = market;
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

    /** The parts of the node; none if every line is decided, so that the node holds one plan alone. */
    Node[] split(Node node) {
        int order = unclearOrder(node.decisions);
        if (order >= 0) {
            Node without = node.child(node.decisions.withPlaced(order, Decisions.NO));
            without.prices.minimum[order] = 0;
            Node with = node.child(node.decisions.withPlaced(order, Decisions.YES));
            freeUse(with, order);
            return new Node[] {without, with};
        }
        int small = unclearSmallOrder(node);
        if (small >= 0) {
            Node full = node.child(node.decisions.withSmall(small, Decisions.NO));
            Node charged = node.child(node.decisions.withSmall(small, Decisions.YES));
            charged.prices.minimum[small] = 0;
            return new Node[] {full, charged};
        }
        return splitLine(node);
    }

    /** An order that is placed anyway costs no item anything. */
    void freeUse(Node node, int order) {
        for (Link link : market.linksOf.get(order)) {
            node.prices.use[link.id()] = 0;
        }
    }

    private int unclearOrder(Decisions decisions) {
        int found = -1;
        double most = -1;
        for (int j = 0; j < market.orders.count; j++) {
            if (decisions.placed[j] == Decisions.OPEN_QUESTION
                    && !market.linksOf.get(j).isEmpty()) {
                double doubt = doubt(j);
                if (doubt > most) {
                    most = doubt;
                    found = j;
                }
            }
        }
        return found;
    }

    private double doubt(int order) {
        double use = 0;
        for (Link link : market.linksOf.get(order)) {
            use = Math.max(use, averages.use(link.id()));
        }
        double scale = 1e-3 * market.orders.opening[order] + 1;
        double near = 1 / (1 + Math.abs(ascent.reducedCost()[order]) / scale);
        return Math.min(use, 1 - use) + 0.3 * near + (use > 0.02 ? 0.05 : 0);
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

    /** Splits on the line whose length was most in doubt, or on any that is not decided yet. */
    private Node[] splitLine(Node node) {
        Terms terms = new Terms(market);
        node.decisions.limit(terms, market);
        int found = -1;
        double most = -1;
        for (Offer offer : market.offers) {
            boolean open = terms.atLeast[offer.id] < terms.atMost[offer.id]
                    && node.decisions.placed[offer.order] != Decisions.NO;
            double weight = offer.costs.landed(Math.max(offer.costs.fewestSteps, 1));
            double doubt =
                    open ? (averages.variance(offer.id) + 1e-6 * averages.steps(offer.id)) * weight * weight : -1;
            if (doubt > most) {
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
