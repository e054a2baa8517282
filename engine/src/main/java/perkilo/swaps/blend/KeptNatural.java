package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** The rule that natural origin content does not fall below its target, or not at all if it misses the target now. */
final class KeptNatural implements Keeps {

    private final BigDecimal target;
    private final NaturalOrigin now;
    private final @Nullable Portion giver;

    private KeptNatural(BigDecimal target, NaturalOrigin now, @Nullable Portion giver) {
        this.target = target;
        this.now = now;
        this.giver = giver;
    }

    /**
     * The rule for a recipe.
     *
     * @param giver takes what the level of the blend changes by; null where it does not change
     * @return null where there is no target
     */
    static @Nullable KeptNatural of(Recipe recipe, @Nullable Portion giver) {
        BigDecimal target = recipe.naturalOriginTarget();
        return target == null ? null : new KeptNatural(target, recipe.naturalOrigin(), giver);
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double least = target.min(now.known()).subtract(now.known()).doubleValue();
        double gives = giver == null ? 0 : index(giver.material().traits().naturalOriginIndex());
        double own = rows.now(one -> weight(one) - gives);
        rows.between(least + own, one -> weight(one) - gives, Double.POSITIVE_INFINITY);
        if (giver != null && isMissed() && giver.material().traits().naturalOriginIndex() == null) {
            rows.between(Double.NEGATIVE_INFINITY, one -> 1, rows.now(one -> 1));
        }
    }

    /**
     * If the known content misses the target, materials of unknown index keep their level: they may count towards the
     * target, so others must not replace them.
     */
    @Override
    public boolean fixes(Material present) {
        return isMissed() && present.traits().naturalOriginIndex() == null;
    }

    private boolean isMissed() {
        return now.known().compareTo(target) < 0;
    }

    private static double weight(Ingredient one) {
        return index(one.material().traits().naturalOriginIndex());
    }

    private static double index(@Nullable Figure index) {
        return index == null ? 0 : NaturalOrigin.counted(index.value()).doubleValue();
    }

    @Override
    public String words() {
        if (!isMissed()) {
            return KeptMessages.naturalOrigin(target);
        }
        return now.isComplete()
                ? KeptMessages.naturalOriginMissed(target)
                : KeptMessages.naturalOriginHalfKnown(target);
    }
}
