package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.model.Formula;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** A recipe in which a blend replaces the lines of a group. */
final class BlendedRecipe {

    private final Recipe recipe;
    private final Group group;
    private final @Nullable Portion giver;

    /**
     * A recipe whose lines make room for a blend.
     *
     * @param giver the line that takes the change in the level of the blend; null if it does not change
     */
    BlendedRecipe(Recipe recipe, Group group, @Nullable Portion giver) {
        this.recipe = recipe;
        this.group = group;
        this.giver = giver;
    }

    /** The recipe with the blend: what stays keeps its line, what is new follows its home line, the rest is removed. */
    Recipe with(List<Ingredient> ingredients, List<BigDecimal> levels) {
        Map<String, BigDecimal> left = new LinkedHashMap<>();
        for (int i = 0; i < ingredients.size(); i++) {
            left.put(Names.key(ingredients.get(i).material().name()), levels.get(i));
        }
        List<Portion> portions = new ArrayList<>();
        BigDecimal change = BigDecimal.ZERO;
        for (int i = 0; i < ingredients.size(); i++) {
            change = change.add(levels.get(i)).subtract(ingredients.get(i).now());
        }
        for (int line = 0; line < recipe.portions().size(); line++) {
            Portion portion = recipe.portions().get(line);
            if (!group.lines().contains(line)) {
                portions.add(portion.equals(giver) ? given(portion, change) : portion);
            } else {
                stay(portion, left, portions);
                enter(line, ingredients, left, portions);
            }
        }
        Formula old = recipe.formula();
        Formula formula =
                new Formula(old.name(), portions.stream().map(Portion::line).toList(), old.batching(), old.origin());
        return recipe.with(formula, portions);
    }

    /** A line that stays, with the whole level of its material; the q.s. line still takes the balance. */
    private static void stay(Portion portion, Map<String, BigDecimal> left, List<Portion> portions) {
        BigDecimal level = left.remove(Names.key(portion.material().name()));
        if (level == null || level.signum() == 0) {
            return;
        }
        Formula.Line line = portion.line();
        boolean same = line.isBalance() || level.compareTo(portion.level()) == 0;
        Formula.Line changed = same ? line : line.with(line.material(), Figure.of(level));
        portions.add(new Portion(changed, portion.material(), level));
    }

    private static Portion given(Portion giver, BigDecimal change) {
        if (change.signum() == 0) {
            return giver;
        }
        BigDecimal level = giver.level().subtract(change);
        Formula.Line line = giver.line();
        Formula.Line changed = line.isBalance() ? line : line.with(line.material(), Figure.of(level));
        return new Portion(changed, giver.material(), level);
    }

    private void enter(int home, List<Ingredient> ingredients, Map<String, BigDecimal> left, List<Portion> portions) {
        Formula.Line pattern = recipe.portions().get(home).line();
        for (Ingredient ingredient : ingredients) {
            if (ingredient.home() != home || ingredient.isIn()) {
                continue;
            }
            BigDecimal level = left.remove(Names.key(ingredient.material().name()));
            if (level != null && level.signum() > 0) {
                Formula.Line line = new Formula.Line(
                        pattern.phase(), ingredient.material().name(), Figure.of(level), pattern.phaseC(), Origin.NONE);
                portions.add(new Portion(line, ingredient.material(), level));
            }
        }
    }
}
