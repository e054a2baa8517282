package perkilo.swaps.blend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** The groups of lines of a formula that are blended together, and those that are not. */
final class Groups {

    private final Recipe recipe;
    private final @Nullable String asked;
    private final @Nullable String material;

    /**
     * Groups of a recipe.
     *
     * @param asked only of this function; null for all
     * @param material only those that it is in; null for all
     */
    Groups(Recipe recipe, @Nullable String asked, @Nullable String material) {
        this.recipe = recipe;
        this.asked = asked == null ? null : Functions.named(asked);
        this.material = material == null ? null : Names.key(material);
    }

    private record Place(Kind kind, @Nullable Role role, String phase) {}

    /** At least two lines of a kind in one phase; emulsifiers in all phases. */
    List<Group> sought() {
        List<Group> groups = new ArrayList<>();
        places().forEach((place, lines) -> {
            if (lines.size() > 1 && isWanted(lines)) {
                groups.add(new Group(place.kind(), phases(lines), lines, roles(lines)));
            }
        });
        return groups;
    }

    /** What is not blended: functions without known rules, and single lines if they are requested. */
    List<BlendStudy> refused() {
        List<BlendStudy> refused = new ArrayList<>();
        others().forEach((work, lines) -> {
            if (isWanted(lines) && (lines.size() > 1 || isAsked())) {
                refused.add(BlendStudy.refused(recipe.formula().name(), work, phases(lines), Refusal.of(work)));
            }
        });
        places().forEach((place, lines) -> {
            if (lines.size() == 1 && isAsked() && isWanted(lines)) {
                refused.add(BlendStudy.refused(
                        recipe.formula().name(),
                        place.kind().title(),
                        phases(lines),
                        BlendMessages.onlyOneLine(
                                recipe.portions().get(lines.get(0)).material().name())));
            }
        });
        return refused;
    }

    private Map<Place, List<Integer>> places() {
        Map<Place, List<Integer>> places = new LinkedHashMap<>();
        for (int line = 0; line < recipe.portions().size(); line++) {
            Portion portion = recipe.portions().get(line);
            Role role = recipe.roleOf(line).role();
            Kind kind = role == null || portion.isKept() ? null : kind(role, portion);
            if (kind != null && isWanted(line)) {
                String phase =
                        kind.acrossPhases() ? "" : Names.key(portion.line().phase());
                places.computeIfAbsent(new Place(kind, kind.byRole() ? role : null, phase), absent -> new ArrayList<>())
                        .add(line);
            }
        }
        return places;
    }

    private Map<String, List<Integer>> others() {
        Map<String, List<Integer>> others = new LinkedHashMap<>();
        for (int line = 0; line < recipe.portions().size(); line++) {
            Portion portion = recipe.portions().get(line);
            Role role = recipe.roleOf(line).role();
            if (role != null && kind(role, portion) == null && isWanted(line)) {
                String name = Kind.preserves(portion.material()) ? Functions.PRESERVATIVE : role.name();
                others.computeIfAbsent(name, absent -> new ArrayList<>()).add(line);
            }
        }
        return others;
    }

    private boolean isAsked() {
        return asked != null || material != null;
    }

    private boolean isWanted(List<Integer> lines) {
        return material == null
                || lines.stream()
                        .map(line -> recipe.portions().get(line).material().name())
                        .anyMatch(name -> Names.key(name).equals(material));
    }

    private boolean isWanted(int line) {
        Portion portion = recipe.portions().get(line);
        return portion.level().signum() > 0
                && !portion.material().isWater()
                && (asked == null || Functions.isThereFor(portion.material(), asked) || isRole(line, asked));
    }

    /** Whether a person means the role of a line; every material that preserves counts as a preservative. */
    private boolean isRole(int line, String word) {
        Role role = recipe.roleOf(line).role();
        return (role != null && Roles.named(word).filter(role::equals).isPresent())
                || (word.equals(Functions.PRESERVATIVE)
                        && Kind.preserves(recipe.portions().get(line).material()));
    }

    private static @Nullable Kind kind(Role role, Portion portion) {
        return Kind.of(role, portion.material()).orElse(null);
    }

    private List<Role> roles(List<Integer> lines) {
        Set<Role> roles = new LinkedHashSet<>();
        for (int line : lines) {
            Role role = recipe.roleOf(line).role();
            if (role != null) {
                roles.add(role);
            }
        }
        return List.copyOf(roles);
    }

    private String phases(List<Integer> lines) {
        Set<String> phases = new LinkedHashSet<>();
        lines.forEach(line -> phases.add(recipe.portions().get(line).line().phase()));
        return String.join(", ", phases);
    }
}
