package perkilo.swaps.blend;

import java.util.List;
import java.util.Optional;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.trial.Dose;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/** The check of a finished blend by the gates that judge levels, like that of a single swap. */
final class BlendCheck {

    private BlendCheck() {}

    /**
     * Why a material whose level rises may not have that level, by its use range or the law; empty if it may. Levels
     * that do not rise are not checked.
     */
    static Optional<String> shut(Recipe before, Recipe after, Blend.Part part) {
        if (part.after().compareTo(part.before()) <= 0) {
            return Optional.empty();
        }
        Dose dose = new Dose(part.before(), part.after(), true, "", List.of());
        return Gates.judgeLevel(new Trial(before, after, 0, part.material(), part.material(), null, dose)).stream()
                .filter(verdict -> !verdict.ok())
                .findFirst()
                .map(verdict -> part.material().name() + ", " + verdict.gate().name() + ": " + verdict.why());
    }
}
