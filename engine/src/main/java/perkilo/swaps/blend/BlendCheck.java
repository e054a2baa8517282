package perkilo.swaps.blend;

import java.util.List;
import java.util.Optional;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.trial.Dose;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/** Holds a finished blend against the gates that look at levels, as a single swap would be. */
final class BlendCheck {

    private BlendCheck() {}

    /**
     * Why a material whose level rises may not have that level, by its use range or the law; empty where it may. What
     * does not rise is as it was.
     */
    static Optional<String> shut(Recipe before, Recipe after, Blend.Part part) {
        if (part.after().compareTo(part.before()) <= 0) {
            return Optional.empty();
        }
        Dose dose = new Dose(part.before(), part.after(), true, "", List.of());
        return Gates.judgeLevel(new Trial(before, after, 0, part.material(), part.material(), dose)).stream()
                .filter(verdict -> !verdict.ok())
                .findFirst()
                .map(verdict -> "%s, %s: %s"
                        .formatted(part.material().name(), verdict.gate().name(), verdict.why()));
    }
}
