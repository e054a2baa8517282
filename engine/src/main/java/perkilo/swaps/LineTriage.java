package perkilo.swaps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.closeness.Undecided;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.RoleOfLine;
import perkilo.swaps.trial.Trial;

/** Decides which lines are compared at all, and keeps what is missing for the others, once for each material. */
final class LineTriage {

    private final boolean actives;
    private final List<KeptLine> kept = new ArrayList<>();
    private final Map<String, Collected> missing = new LinkedHashMap<>();

    /**
     * A triage.
     *
     * @param actives whether lines that are kept because of their role are opened
     */
    LineTriage(boolean actives) {
        this.actives = actives;
    }

    private record Collected(Material material, Set<String> columns, Set<String> neededFor) {}

    /**
     * A line that can be compared.
     *
     * @param role what its material is there for
     * @param sameSubstanceOnly whether only the same substance may take its place
     */
    record Open(Role role, boolean sameSubstanceOnly) {

        /** Whether a material may be tried in the line. */
        boolean admits(Material from, Material to) {
            return Roles.plays(to, role) && (!sameSubstanceOnly || Undecided.isSameSubstance(from, to));
        }
    }

    /** The line as it can be compared; null if it is kept, with the reason among {@link #kept}. */
    @Nullable Open open(Recipe recipe, int line) {
        Portion portion = recipe.portions().get(line);
        RoleOfLine ofLine = recipe.roleOf(line);
        Role role = ofLine.role();
        if (portion.isKept()) {
            return keep(recipe, portion, role, SwapMessages.keptByWish());
        }
        if (role == null) {
            return keep(recipe, portion, null, whyNoRole(portion, ofLine));
        }
        boolean opened = role.kept();
        if (opened && portion.keep() == null && !actives) {
            return keep(recipe, portion, role, SwapMessages.keptByRole(role.name()));
        }
        List<String> lacking = Undecided.alone(role, recipe.system().isEmulsion(), portion.material());
        if (!lacking.isEmpty()) {
            add(
                    portion.material(),
                    lacking,
                    SwapMessages.neededFor(role.name(), recipe.formula().name()));
            return keep(recipe, portion, role, SwapMessages.ownFactMissing(lacking));
        }
        return new Open(role, opened);
    }

    private static String whyNoRole(Portion portion, RoleOfLine ofLine) {
        if (ofLine.typed()) {
            return SwapMessages.typedRoleUnknown(portion.line().wish().role());
        }
        String material = portion.material().name();
        return ofLine.materials().isEmpty()
                ? SwapMessages.roleUnknown(material)
                : SwapMessages.roleDoesNotFit(
                        material, ofLine.materials().stream().map(Role::name).toList());
    }

    /** Whether all is known that a candidate has to be ranked by; what is not is kept as missing. */
    boolean isDecided(Trial trial) {
        Role role = trial.role();
        if (role == null) {
            return false;
        }
        if (Undecided.lacksOwnActive(role, trial.from(), trial.to())) {
            add(
                    trial.from(),
                    List.of(Fact.ACTIVE.header()),
                    SwapMessages.neededToDose(role.name(), trial.from().name()));
            return false;
        }
        List<String> lacking = Undecided.of(role, trial.before().system().isEmulsion(), trial.from(), trial.to());
        if (!lacking.isEmpty()) {
            add(
                    trial.to(),
                    lacking,
                    SwapMessages.inPlaceOf(role.name(), trial.from().name()));
        }
        return lacking.isEmpty();
    }

    /** The lines that are not compared, in the order in which they were asked. */
    List<KeptLine> kept() {
        return List.copyOf(kept);
    }

    /** What is missing, one entry for each material. */
    List<MissingFact> missing() {
        return missing.values().stream()
                .map(one -> new MissingFact(one.material(), List.copyOf(one.columns()), List.copyOf(one.neededFor())))
                .toList();
    }

    private void add(Material material, List<String> columns, String neededFor) {
        Collected collected = missing.computeIfAbsent(
                Names.key(material.name()),
                key -> new Collected(material, new LinkedHashSet<>(), new LinkedHashSet<>()));
        collected.columns().addAll(columns);
        collected.neededFor().add(neededFor);
    }

    private @Nullable Open keep(Recipe recipe, Portion portion, @Nullable Role role, String why) {
        kept.add(new KeptLine(recipe.formula(), portion, role == null ? "" : role.name(), why));
        return null;
    }
}
