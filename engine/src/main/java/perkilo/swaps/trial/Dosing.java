package perkilo.swaps.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.role.Role;

/**
 * Puts another material into a line, as much of it as does the same work: as much active matter, as many equivalents,
 * or whatever the {@link Role role} of the line is dosed by.
 *
 * <p>Levels are rounded to what a {@link BenchBalance} weighs. The q.s. line takes the difference; without one, process
 * water does. Where what it takes is not known the level stays.
 */
public final class Dosing {

    private final Recipe recipe;
    private final Map<Integer, RoleOfLine> roles = new HashMap<>();

    /**
     * Dosing for a recipe.
     *
     * @param recipe as it is now
     */
    public Dosing(Recipe recipe) {
        this.recipe = recipe;
    }

    /**
     * Tries a material in a line.
     *
     * @param line index of the line
     * @param to what is tried
     */
    public Trial of(int line, Material to) {
        return of(line, to, roles.computeIfAbsent(line, recipe::roleOf).role());
    }

    private Trial of(int line, Material to, @Nullable Role role) {
        Portion at = recipe.portions().get(line);
        DoseByRole wanted = DoseByRole.of(role, at.level(), at.material(), to);
        boolean same = wanted.level().compareTo(at.level()) == 0;
        if (at.line().isBalance() && !same) {
            wanted = wanted.warning(DoseMessages.balanceKeepsLevel(BenchBalance.rounded(wanted.level())));
        }
        BigDecimal level = same || at.line().isBalance() ? at.level() : BenchBalance.rounded(wanted.level());
        Draft draft = replaced(line, to, level);
        List<String> cautions = new ArrayList<>(wanted.cautions());
        if (draft.caution != null) {
            cautions.add(draft.caution);
        }
        String trouble = draft.trouble;
        Dose dose = new Dose(at.level(), level, trouble == null, trouble == null ? wanted.why() : trouble, cautions);
        return new Trial(recipe, recipe.with(draft.formula, draft.portions), line, at.material(), to, role, dose);
    }

    private Draft replaced(int line, Material to, BigDecimal level) {
        Portion at = recipe.portions().get(line);
        BigDecimal difference = level.subtract(at.level());
        int giver = difference.signum() == 0 ? -1 : giver(line);
        List<Portion> portions = new ArrayList<>(recipe.portions());
        portions.set(line, new Portion(line(at.line(), to.name(), level, at.level()), to, level));
        String trouble = null;
        String caution = null;
        if (giver >= 0) {
            Portion gives = portions.get(giver);
            BigDecimal left = gives.level().subtract(difference);
            caution = gives.line().isBalance()
                    ? null
                    : DoseMessages.differenceTaken(gives.material().name(), gives.level(), left);
            portions.set(
                    giver,
                    new Portion(
                            line(gives.line(), gives.line().material(), left, gives.level()), gives.material(), left));
            trouble = left.signum() < 0
                    ? DoseMessages.tooLittleLeft(gives.material().name(), gives.level(), difference)
                    : null;
        } else if (difference.signum() != 0) {
            trouble = DoseMessages.noBalance(difference);
        }
        Formula old = recipe.formula();
        Formula formula =
                new Formula(old.name(), portions.stream().map(Portion::line).toList(), old.batching(), old.origin());
        return new Draft(formula, portions, trouble, caution);
    }

    /** The line that takes the difference: the q.s. line, else the largest line of water; −1 if there is neither. */
    private int giver(int except) {
        int water = -1;
        for (int i = 0; i < recipe.portions().size(); i++) {
            Portion portion = recipe.portions().get(i);
            if (i == except) {
                continue;
            }
            if (portion.line().isBalance()) {
                return i;
            }
            boolean larger = water < 0
                    || portion.level().compareTo(recipe.portions().get(water).level()) > 0;
            if (portion.material().isWater() && larger) {
                water = i;
            }
        }
        return water;
    }

    private static Formula.Line line(Formula.Line old, String material, BigDecimal level, BigDecimal before) {
        Figure typed = old.level();
        Figure figure = typed == null || level.compareTo(before) == 0 ? typed : Figure.of(level);
        return old.with(material, figure);
    }

    private record Draft(
            Formula formula,
            List<Portion> portions,
            @Nullable String trouble,
            @Nullable String caution) {}
}
