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
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Recipe;

/** Whether a material may come into a blend, beside which line, and if not, why. */
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
     * @param home index of the line beside which it may stand; −1 where it may not come in
     * @param why it may not, in words that fit several materials
     */
    record Answer(int home, String why) {}

    Answer of(Material material) {
        Optional<String> kind = otherKind(material);
        if (kind.isPresent()) {
            return no(kind.get());
        }
        if (recipe.levelOf(material).signum() > 0) {
            return no("in the formula already, elsewhere");
        }
        if (material.traits().useMax() == null) {
            return no("their use range is not known");
        }
        if (Pantry.most(material) <= 0 || Pantry.most(material) < Pantry.least(material)) {
            return no("their lowest usual level lies above the highest that is usual and legal");
        }
        // two newcomers of opposite charge would pass the gate one by one
        String charge = KeptCharges.charge(material);
        if (KeptCharges.isCharged(charge) && !charges.contains(charge)) {
            return no("nothing in the formula is %s as they are".formatted(charge));
        }
        Optional<String> kept =
                rules.stream().flatMap(rule -> rule.keepsOut(material).stream()).findFirst();
        if (kept.isPresent()) {
            return no(kept.get());
        }
        boolean close = group.lines().stream()
                .anyMatch(line -> Closeness.of(recipe.portions().get(line).material(), material)
                                .score()
                                .compareTo(leastClose)
                        >= 0);
        return close
                ? gates(material)
                : no("less than %s of 100 close to every material of the blend".formatted(leastClose.toPlainString()));
    }

    /** What can do the work of the blend, and is not blended with it. */
    private Optional<String> otherKind(Material material) {
        if (Functions.does(material, Functions.PRESERVATIVE)) {
            return Optional.of("they preserve as well, and what preserves is not blended anew for a saving: only a"
                    + " challenge test shows whether a preservative system protects the product");
        }
        if (Kind.of(material).filter(group.kind()::equals).isPresent()) {
            return Optional.empty();
        }
        if (!Functions.work(material).equals(group.kind().work())) {
            return Optional.of("they can do this, but their main work is another one");
        }
        return Optional.of(
                Functions.isSolid(material)
                        ? "they are solid at room temperature, and not blended with what spreads"
                        : "they are not known to be solid at room temperature, as those of the blend are");
    }

    /** It has to fit in the place of one line, and next to all of them in charge: any of them may stay. */
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
                return no(words(charge.get()));
            }
            if (shut.isEmpty() && home < 0) {
                home = line;
            }
            if (why.isEmpty() && !shut.isEmpty()) {
                why = words(shut.get(0));
            }
        }
        return home < 0 ? no(why) : new Answer(home, "");
    }

    private static String words(Verdict shut) {
        return shut.gate().name() + ": " + shut.why();
    }

    private static Answer no(String why) {
        return new Answer(-1, why);
    }
}
