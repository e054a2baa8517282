package perkilo.swaps.blend;

import java.util.List;
import perkilo.model.Material;
import perkilo.origin.Figure;

/**
 * The rule that the sum of the levels, each as a share of its material's usual maximum, stays within a tolerance. It is
 * used instead of strength, so that a weak material does not replace a strong one gram for gram.
 */
final class KeptStrength implements Keeps {

    private final String verb;
    private final double tolerance;

    /**
     * A rule.
     *
     * @param verb what a gram does, such as {@code thickens}
     * @param tolerance as a fraction of the sum as it is
     */
    KeptStrength(String verb, double tolerance) {
        this.verb = verb;
        this.tolerance = tolerance;
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double now = rows.now(one -> partOfUsual(one.material()));
        rows.between(now * (1 - tolerance), one -> partOfUsual(one.material()), now * (1 + tolerance));
    }

    private static double partOfUsual(Material material) {
        Figure most = material.traits().useMax();
        return most == null || most.value().signum() <= 0 ? 0 : 1 / most.value().doubleValue();
    }

    @Override
    public boolean fixes(Material present) {
        return partOfUsual(present) <= 0;
    }

    @Override
    public String words() {
        return KeptMessages.strength(verb, Math.round(tolerance * 100));
    }
}
