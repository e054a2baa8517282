package perkilo.ordering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Keeps of many positions those to which no position further on, or as far, is as cheap. */
final class Frontier {

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
}
