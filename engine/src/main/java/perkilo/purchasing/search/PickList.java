package perkilo.purchasing.search;

import java.util.Arrays;

/** Gathers the lines of one item from the last to the first. */
final class PickList {
    private int[] offers = new int[8];
    private long[] steps = new long[8];
    private int count;
    private double cost;

    void add(PackChoice offer, long stepsOfIt) {
        if (count == offers.length) {
            offers = Arrays.copyOf(offers, 2 * count);
            steps = Arrays.copyOf(steps, 2 * count);
        }
        offers[count] = offer.id;
        steps[count++] = stepsOfIt;
        cost += offer.cost(stepsOfIt);
    }

    Picks reversed(double credit) {
        int[] offersInOrder = new int[count];
        long[] stepsInOrder = new long[count];
        for (int i = 0; i < count; i++) {
            offersInOrder[i] = offers[count - 1 - i];
            stepsInOrder[i] = steps[count - 1 - i];
        }
        return new Picks(offersInOrder, stepsInOrder, cost - credit);
    }
}
