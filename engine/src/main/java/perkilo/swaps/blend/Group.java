package perkilo.swaps.blend;

import java.util.List;
import perkilo.model.Material;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/**
 * Lines of one kind, in one phase or across phases.
 *
 * @param kind of materials
 * @param phase as typed; several are separated by commas
 * @param lines indexes into the recipe
 * @param roles what the materials of the lines are there for
 */
record Group(Kind kind, String phase, List<Integer> lines, List<Role> roles) {

    Group {
        roles = List.copyOf(roles);
        lines = List.copyOf(lines);
    }

    /** Whether a material can be put into formulas for what these lines are there for. */
    boolean isPlayedBy(Material material) {
        return Roles.of(material).stream().anyMatch(role -> kind.admits(roles, role));
    }

    /** Whether that is what it is usually put into formulas for. */
    boolean isMainRoleOf(Material material) {
        return Roles.first(material).filter(role -> kind.admits(roles, role)).isPresent();
    }

    /** Its name on a sheet: the role where only lines of one role are blended. */
    String title() {
        return kind.byRole() ? kind.title() + " (" + roles.get(0).name() + ")" : kind.title();
    }
}
