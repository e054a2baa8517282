package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Tables that all item programs use one after the other, so that none has to be allocated anew. */
final class Workspace {
    /** The last stage that was filled. */
    int last;

    private final List<double[]> stages = new ArrayList<>();
    private double[] smaller = {};
    private double[] never = {};
    private double[] costs = {};
    private double[] cheapest = {};

    /** The table of a stage, with at least so many positions. */
    double[] stage(int index, int positions) {
        while (stages.size() <= index) {
            stages.add(new double[Math.max(positions, 64)]);
        }
        double[] stage = stages.get(index);
        if (stage.length < positions) {
            stage = new double[positions];
            stages.set(index, stage);
        }
        return stage;
    }

    /** The smaller value of two tables, position by position. */
    double[] smaller(double[] a, double[] b, int positions) {
        if (smaller.length < positions) {
            smaller = new double[positions];
        }
        for (int s = 0; s < positions; s++) {
            smaller[s] = Math.min(a[s], b[s]);
        }
        return smaller;
    }

    /** A table in which no position can be reached. */
    double[] never(int positions) {
        if (never.length < positions) {
            never = new double[positions];
            Arrays.fill(never, Double.POSITIVE_INFINITY);
        }
        return never;
    }

    /** By steps: the cost of a line of the offer under the terms. */
    double[] costs(PackChoice offer, Terms terms, int most) {
        if (terms.plain(offer)) {
            return offer.costs();
        }
        if (costs.length <= most) {
            costs = new double[2 * most + 2];
        }
        costs[0] = Double.POSITIVE_INFINITY;
        for (int n = 1; n <= most; n++) {
            costs[n] = terms.cost(offer, n);
        }
        return costs;
    }

    /** By steps: the least cost of a line of at least so many steps. Call {@link #costs} first. */
    double[] cheapestFrom(PackChoice offer, Terms terms, int most) {
        if (terms.plain(offer)) {
            return offer.cheapestFrom();
        }
        if (cheapest.length <= most) {
            cheapest = new double[2 * most + 2];
        }
        LineCostTables.cheapestFrom(costs, most, cheapest);
        return cheapest;
    }
}
