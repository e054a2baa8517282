package perkilo.swaps.label;

import java.util.List;
import perkilo.swaps.trial.Recipe;

/**
 * What a swap changes on the label.
 *
 * @param before the list of ingredients now
 * @param after the new one
 * @param enters names that are new
 * @param leaves names that are gone
 */
public record LabelChange(IngredientList before, IngredientList after, List<String> enters, List<String> leaves) {

    public LabelChange {
        enters = List.copyOf(enters);
        leaves = List.copyOf(leaves);
    }

    /** The change from one recipe to another. */
    public static LabelChange of(Recipe before, Recipe after) {
        IngredientList old = IngredientList.of(before);
        IngredientList now = IngredientList.of(after);
        return new LabelChange(old, now, without(now.names(), old.names()), without(old.names(), now.names()));
    }

    private static List<String> without(List<String> names, List<String> others) {
        return names.stream().filter(name -> !others.contains(name)).toList();
    }
}
