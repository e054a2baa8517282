package perkilo.swaps.blend;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.trial.Portion;

/** The rule that active matter stays the same; the line with the balance, or water, takes the difference in level. */
final class KeptActive implements Keeps {

    private final @Nullable Portion giver;

    /**
     * A rule.
     *
     * @param giver takes the difference; null if no line does, so that the total level has to stay as well
     */
    KeptActive(@Nullable Portion giver) {
        this.giver = giver;
    }

    /** Active matter of a material as a fraction; zero where it is not known. */
    static double active(Material material) {
        Figure active = material.traits().active();
        return active == null ? 0 : active.value().doubleValue();
    }

    private static double active(Ingredient one) {
        return active(one.material());
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double active = rows.now(KeptActive::active);
        rows.between(active, KeptActive::active, active);
        double total = rows.now(one -> 1);
        if (giver == null) {
            rows.between(total, one -> 1, total);
        } else {
            rows.between(0, one -> 1, total + giver.level().doubleValue());
        }
    }

    @Override
    public Optional<String> keepsOut(Material candidate) {
        return active(candidate) > 0 ? Optional.empty() : Optional.of(KeptMessages.activeMatterUnknown());
    }

    @Override
    public boolean fixes(Material present) {
        return active(present) <= 0;
    }

    @Override
    public String words() {
        return giver == null
                ? KeptMessages.activeMatterAndTotal()
                : KeptMessages.activeMatter(giver.material().name());
    }
}
