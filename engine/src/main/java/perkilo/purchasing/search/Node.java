package perkilo.purchasing.search;

/** A part of all plans: those that keep the decisions. */
final class Node {
    final Decisions decisions;
    final int depth;
    /** The best prices known for it. */
    Multipliers prices;
    /** No plan in it costs less. */
    double bound;

    Node(Decisions decisions, Multipliers prices, double bound, int depth) {
        this.decisions = decisions;
        this.prices = prices;
        this.bound = bound;
        this.depth = depth;
    }

    Node child(Decisions further) {
        return new Node(further, prices.copy(), bound, depth + 1);
    }
}
