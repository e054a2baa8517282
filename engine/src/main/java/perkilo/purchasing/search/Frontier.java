package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Keeps the positions that no other position beats: none that is as far or further is as cheap. */
final class Frontier {

    /** The most positions that are gone through. */
    private static final int MOST = 50_000;

    private Frontier() {}

    private static Comparator<Label> furthestFirst(SupplyGrid grid) {
        return (a, b) -> grid.compare(b.base(), b.units(), a.base(), a.units());
    }

    /** The positions worth keeping, from the furthest to the nearest. */
    static List<Label> of(List<Label> labels, SupplyGrid grid) {
        List<Label> sorted = new ArrayList<>(labels);
        sorted.sort(furthestFirst(grid).thenComparingDouble(Label::cost));
        List<Label> kept = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (Label label : sorted) {
            if (label.cost() < least) {
                least = label.cost();
                kept.add(label);
            }
        }
        return kept;
    }

    /** Whether positions have to be left out. */
    static boolean isTooLong(List<Label> labels) {
        return labels.size() > MOST;
    }

    /** Leaves out positions evenly, until few enough are left. */
    static List<Label> thinned(List<Label> labels) {
        List<Label> kept = new ArrayList<>();
        int every = labels.size() / MOST + 1;
        for (int l = 0; l < labels.size(); l += every) {
            kept.add(labels.get(l));
        }
        return kept;
    }
}
