package perkilo.swaps;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.model.Formula;
import perkilo.names.Names;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/**
 * Several swaps, and at most one blend, in one formula together. Each swap must pass every gate in the recipe that has
 * all the others in it.
 *
 * @param formula with all of them
 * @param cautions of all of them together, each once
 */
public record ChangesTogether(Formula formula, List<String> cautions) {

    public ChangesTogether {
        cautions = List.copyOf(cautions);
    }

    /**
     * The formula with some changes; null if they do not go together.
     *
     * @param swaps of the same formula; at least one if there is no blend
     * @param blend of the same formula; null for none
     */
    public static @Nullable ChangesTogether of(List<Swap> swaps, @Nullable Blend blend) {
        Recipe start = blend == null ? swaps.get(0).trial().before() : blend.after();
        Set<String> cautions = new LinkedHashSet<>(blend == null ? List.of() : blend.cautions());
        for (Swap last : swaps) {
            List<Swap> others = new ArrayList<>(swaps);
            others.remove(last);
            Recipe recipe = with(start, others);
            Trial trial = recipe == null ? null : in(recipe, last);
            if (trial == null || !isOpen(trial)) {
                return null;
            }
            cautions.addAll(last.cautions());
            cautions.addAll(trial.dose().cautions());
        }
        Recipe all = with(start, swaps);
        if (all == null || (blend != null && !blend.holdsIn(all))) {
            return null;
        }
        return new ChangesTogether(all.formula(), List.copyOf(cautions));
    }

    private static boolean isOpen(Trial trial) {
        return trial.dose().balanced() && Gates.judge(trial).stream().allMatch(Verdict::ok);
    }

    /** A recipe with some swaps, in their order; null if one of them does not find its line. */
    private static @Nullable Recipe with(Recipe start, List<Swap> swaps) {
        Recipe recipe = start;
        for (Swap swap : swaps) {
            Trial trial = in(recipe, swap);
            if (trial == null) {
                return null;
            }
            recipe = trial.after();
        }
        return recipe;
    }

    /** A swap in a recipe that others have changed; null if its line is no longer there. */
    private static @Nullable Trial in(Recipe recipe, Swap swap) {
        Formula.Line wanted = swap.trial().portion().line();
        for (int line = 0; line < recipe.portions().size(); line++) {
            Formula.Line there = recipe.portions().get(line).line();
            if (there.origin().equals(wanted.origin())
                    && there.phase().equals(wanted.phase())
                    && Names.key(there.material()).equals(Names.key(wanted.material()))) {
                return new Dosing(recipe).of(line, swap.trial().to());
            }
        }
        return null;
    }
}
