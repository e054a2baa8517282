package perkilo.decision;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.costing.RunCost;

/**
 * Something that brings the cost of a unit down.
 *
 * @param kind what is changed
 * @param what in words, such as {@code a run of 1,079 units}
 * @param cautions of a swap or a blend, each in full sentences
 * @param alone the run with this change alone
 * @param effect of this change alone on the unit cost, in home currency; below zero
 */
public record TargetMove(Kind kind, String what, List<String> cautions, RunCost alone, BigDecimal effect) {

    /** What can be changed. */
    public enum Kind {
        RUN_SIZE,
        SWAP,
        BLEND,
        /** One offer for an item, in place of what the cheapest purchase takes. */
        OFFER
    }

    public TargetMove {
        cautions = List.copyOf(cautions);
    }

    /** The same move with more to check. */
    TargetMove withCautions(List<String> more) {
        Set<String> all = new LinkedHashSet<>(cautions);
        all.addAll(more);
        return new TargetMove(kind, what, List.copyOf(all), alone, effect);
    }
}
