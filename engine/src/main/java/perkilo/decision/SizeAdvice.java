package perkilo.decision;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.model.Product;

/**
 * Which run sizes of a product are worth a thought.
 *
 * @param product the product
 * @param smallest the smallest run that was named
 * @param largest the largest run that was named
 * @param steps the sizes between them from which a unit really costs less, rising
 * @param smaller how many sizes there are from which it costs less by too little to be listed
 * @param limit the largest size whose leftovers can still be used; null if that is not known
 * @param unknown why there is no limit; null if there is one
 * @param isExact whether no step can have been missed
 */
public record SizeAdvice(
        Product product,
        RunCost smallest,
        RunCost largest,
        List<SizeStep> steps,
        int smaller,
        @Nullable Limit limit,
        @Nullable Unknown unknown,
        boolean isExact) {

    public SizeAdvice {
        steps = List.copyOf(steps);
    }

    /**
     * The largest size after which the next run still comes before a leftover expires: yearly units × shelf life / 12.
     *
     * @param units rounded down
     * @param material the bought material with the shortest shelf life
     */
    public record Limit(long units, String material) {}

    /** Why there is no limit. */
    public enum Unknown {
        NO_YEARLY_UNITS,
        NO_SHELF_LIFE
    }
}
