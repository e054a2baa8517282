package perkilo.swaps.label;

import java.util.ArrayList;
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

    /** Names that are in both lists, but stand before or behind others than now; as few as explain the new order. */
    public List<String> moves() {
        List<String> old = before.names();
        List<String> shared = after.names().stream().filter(old::contains).toList();
        List<String> kept = longestInOrder(shared, old);
        return without(shared, kept);
    }

    /** The longest part of a list that stands in the order of another one. */
    private static List<String> longestInOrder(List<String> names, List<String> order) {
        List<List<String>> best = new ArrayList<>();
        List<String> longest = List.of();
        for (int i = 0; i < names.size(); i++) {
            List<String> before = List.of();
            for (int j = 0; j < i; j++) {
                boolean inOrder = order.indexOf(names.get(j)) < order.indexOf(names.get(i));
                before = inOrder && best.get(j).size() > before.size() ? best.get(j) : before;
            }
            List<String> all = new ArrayList<>(before);
            all.add(names.get(i));
            best.add(all);
            longest = all.size() > longest.size() ? all : longest;
        }
        return longest;
    }

    private static List<String> without(List<String> names, List<String> others) {
        return names.stream().filter(name -> !others.contains(name)).toList();
    }
}
