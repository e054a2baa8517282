package perkilo.purchasing.search;

import java.util.Arrays;

/** What is bought of one item: lines in the order of the item's offers. */
final class Picks {
    static final Picks NOTHING = new Picks(new int[0], new long[0], 0);

    /** Cost of the lines and of keeping them, less the credit for leftovers; without the orders' charges. */
    final double cost;

    private final int[] offers;
    private final long[] steps;

    /**
     * Lines.
     *
     * @param offers by line: the offer's id
     * @param steps by line: how many steps
     */
    Picks(int[] offers, long[] steps, double cost) {
        this.offers = offers;
        this.steps = steps;
        this.cost = cost;
    }

    boolean sameAs(Picks other) {
        return Arrays.equals(offers, other.offers) && Arrays.equals(steps, other.steps);
    }

    int lines() {
        return offers.length;
    }

    /** The offer's id. */
    int offer(int line) {
        return offers[line];
    }

    long steps(int line) {
        return steps[line];
    }
}
