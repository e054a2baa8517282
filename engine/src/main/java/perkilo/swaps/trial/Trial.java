package perkilo.swaps.trial;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.swaps.role.Role;

/**
 * One material tried in the place of another.
 *
 * @param before the recipe as it is
 * @param after the recipe with the other material
 * @param line index of the line that changes
 * @param from the material that the line has now
 * @param to what is tried instead
 * @param role what the line's material is there for; null if it is not known
 * @param dose how much of it
 */
public record Trial(
        Recipe before,
        Recipe after,
        int line,
        Material from,
        Material to,
        @Nullable Role role,
        Dose dose) {

    /** A line with its own material tried in it: what the recipe keeps without any change. */
    public static Trial ofNothing(Recipe recipe, int line) {
        Portion portion = recipe.portions().get(line);
        Dose same = new Dose(portion.level(), portion.level(), true, DoseMessages.unchanged(), List.of());
        return new Trial(
                recipe,
                recipe,
                line,
                portion.material(),
                portion.material(),
                recipe.roleOf(line).role(),
                same);
    }

    /** The line as it is now. */
    public Portion portion() {
        return before.portions().get(line);
    }

    /** What the phase dissolves. */
    public PhaseNature nature() {
        return before.natureOf(line);
    }

    /** Whether the product is rinsed off. */
    public boolean rinseOff() {
        return before.formula().batching().rinseOff();
    }
}
