package perkilo.swaps.blend;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.trial.Recipe;

/** How much of natural origin a blend has to bring so that the formula keeps its target. */
final class NaturalKept {

    private NaturalKept() {}

    /**
     * The least that the lines of a group have to bring, as a fraction of the formula.
     *
     * @return null where there is no target; what they bring now where the target is missed already
     */
    static @Nullable BigDecimal of(Recipe recipe, Group group) {
        BigDecimal target = recipe.naturalOriginTarget();
        if (target == null) {
            return null;
        }
        NaturalOrigin own = NaturalOrigin.NOTHING;
        for (int line : group.lines()) {
            own = own.plus(
                    recipe.portions().get(line).level(),
                    recipe.portions().get(line).material().traits().naturalOriginIndex());
        }
        BigDecimal others = recipe.naturalOrigin().known().subtract(own.known());
        return target.subtract(others).min(own.known());
    }
}
