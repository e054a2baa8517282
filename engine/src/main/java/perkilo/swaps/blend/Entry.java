package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.model.Material;
import perkilo.swaps.closeness.Closeness;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.role.Role;
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Recipe;

/** The decision whether a material may come into a blend, beside which line, and if not, why. */
final class Entry {

    private final Recipe recipe;
    private final Group group;
    private final List<Keeps> rules;
    private final BigDecimal leastClose;
    private final Set<String> charges;

    Entry(Recipe recipe, Group group, List<Keeps> rules, BigDecimal leastClose) {
        this.recipe = recipe;
        this.group = group;
        this.rules = rules;
        this.leastClose = leastClose;
        this.charges = recipe.portions().stream()
                .map(portion -> KeptCharges.charge(portion.material()))
                .collect(Collectors.toSet());
    }

    /**
     * An answer.
     *
     * @param home index of the line beside which the material may be added; −1 if it may not come in
     * @param why it may not, in sentences that fit several materials
     */
    record Answer(int home, String why) {}

    Answer of(Material material) {
        Optional<String> kind = otherKind(material);
        if (kind.isPresent()) {
            return no(kind.get());
        }
        if (recipe.levelOf(material).signum() > 0) {
            return no(BlendMessages.inFormulaAlready());
        }
        if (material.traits().useMax() == null) {
            return no(BlendMessages.useRangeUnknown());
        }
        if (Pantry.most(material) <= 0 || Pantry.most(material) < Pantry.least(material)) {
            return no(BlendMessages.noUsableLevel());
        }
        // two newcomers of opposite charge would pass the gate one by one
        String charge = KeptCharges.charge(material);
        if (KeptCharges.isCharged(charge) && !charges.contains(charge)) {
            return no(BlendMessages.noOtherOfCharge(charge));
        }
        Optional<String> kept =
                rules.stream().flatMap(rule -> rule.keepsOut(material).stream()).findFirst();
        if (kept.isPresent()) {
            return no(kept.get());
        }
        boolean close = group.lines().stream()
                .anyMatch(line -> closeness(line, material).compareTo(leastClose) >= 0);
        return close ? gates(material) : no(BlendMessages.notClose(leastClose.toPlainString()));
    }

    /** How close a material is to that of a line, at worst. */
    private BigDecimal closeness(int line, Material material) {
        Role role = recipe.roleOf(line).role();
        return role == null
                ? BigDecimal.ZERO
                : Closeness.of(role, recipe.portions().get(line).material(), material)
                        .worst();
    }

    /** Why a material with a role of the blend is not blended with it. */
    private Optional<String> otherKind(Material material) {
        if (Kind.preserves(material)) {
            return Optional.of(BlendMessages.alsoPreserves());
        }
        if (!group.isMainRoleOf(material)) {
            return Optional.of(BlendMessages.otherMainRole());
        }
        if (Kind.of(material).filter(group.kind()::equals).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(Functions.isSolid(material) ? BlendMessages.solid() : BlendMessages.notSolid());
    }

    /** A material has to fit in the place of one line, and its charge beside all lines: any of them may stay. */
    private Answer gates(Material material) {
        int home = -1;
        String why = "";
        for (int line : group.lines()) {
            List<Verdict> shut = Gates.judgeAtAnyLevel(new Dosing(recipe).of(line, material)).stream()
                    .filter(verdict -> !verdict.ok())
                    .toList();
            Optional<Verdict> charge = shut.stream()
                    .filter(verdict -> verdict.gate().equals(Gates.CHARGE))
                    .findFirst();
            if (charge.isPresent()) {
                return no(charge.get().why());
            }
            if (shut.isEmpty() && home < 0) {
                home = line;
            }
            if (why.isEmpty() && !shut.isEmpty()) {
                why = shut.get(0).why();
            }
        }
        return home < 0 ? no(why) : new Answer(home, "");
    }

    private static Answer no(String why) {
        return new Answer(-1, why);
    }
}
