package perkilo.swaps.blend;

import java.util.List;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.trial.Dose;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/** Holds a finished blend against the gates that look at levels, as a single swap would be. */
final class BlendCheck {

    private BlendCheck() {}

    /** Whether a material whose level rises stays within its use range and the law; what does not rise is as it was. */
    static boolean holds(Recipe before, Recipe after, Blend.Part part) {
        if (part.after().compareTo(part.before()) <= 0) {
            return true;
        }
        Dose dose = new Dose(part.before(), part.after(), true, "", List.of());
        return Gates.judgeLevel(new Trial(before, after, 0, part.material(), part.material(), dose)).stream()
                .allMatch(Verdict::ok);
    }
}
