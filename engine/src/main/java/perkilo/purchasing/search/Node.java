package perkilo.purchasing.search;

/** A node of the search: all plans that keep its decisions. */
final class Node {
    final Decisions decisions;
    final int depth;
    /** The prices with the best bound so far. */
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
