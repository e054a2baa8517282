package perkilo.swaps.trial;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.LineWish;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/**
 * What the material of a line is in the formula for.
 *
 * <p>The role typed in the line counts, and a word that is no role leaves the line without one; else the first role of
 * the material that can be played in this phase and in this kind of formula. The level does not decide: usual levels
 * are known of materials, not of roles.
 *
 * @param role null if it is not known
 * @param materials all roles of the material, the most usual first; none if none is known
 * @param typed whether the line states it
 */
public record RoleOfLine(@Nullable Role role, List<Role> materials, boolean typed) {

    public RoleOfLine {
        materials = List.copyOf(materials);
    }

    /** The role of one line of a recipe. */
    public static RoleOfLine of(Recipe recipe, int line) {
        Portion portion = recipe.portions().get(line);
        LineWish wish = portion.line().wish();
        List<Role> materials = Roles.of(portion.material());
        if (!wish.role().isBlank()) {
            return new RoleOfLine(Roles.named(wish.role()).orElse(null), materials, true);
        }
        PhaseNature nature = recipe.natureOf(line);
        for (Role role : materials) {
            if (fits(role, nature) && recipe.system().fits(role)) {
                return new RoleOfLine(role, materials, false);
            }
        }
        return new RoleOfLine(null, materials, false);
    }

    /** Whether a role belongs into a phase; an unknown phase may hold any. */
    public static boolean fits(Role role, PhaseNature nature) {
        return switch (role.place()) {
            case BOTH -> true;
            case WATER -> nature != PhaseNature.OIL;
            case OIL -> nature != PhaseNature.WATER;
        };
    }
}
