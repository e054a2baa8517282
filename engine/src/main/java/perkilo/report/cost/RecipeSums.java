package perkilo.report.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.model.Formula;
import perkilo.report.inputs.InputsWatch;
import perkilo.sheet.Expr;

/** Whether the recipes of the runs still add up to 100 % in the person's cells. */
final class RecipeSums {

    private static final int DIGITS = 9;

    private RecipeSums() {}

    static InputsWatch.Own of(CostOutcome.Costed costed) {
        Set<Formula> formulas = new LinkedHashSet<>();
        for (RunAnswer answer : costed.answers()) {
            RunCost cost = answer.cost();
            if (cost != null) {
                formulas.add(cost.needs().formula());
            }
        }
        List<Expr> wrong = new ArrayList<>();
        for (Formula formula : formulas) {
            Expr one = wrong(formula);
            if (one != null && one.value().signum() == 0) {
                wrong.add(one);
            }
        }
        return InputsWatch.recipes(Expr.sum(wrong));
    }

    /**
     * One if a recipe does not add up, or if nothing is left for the line that takes the balance; null for no recipe.
     */
    private static @Nullable Expr wrong(Formula formula) {
        List<Expr> levels = new ArrayList<>();
        boolean balance = false;
        for (Formula.Line line : formula.lines()) {
            if (line.level() == null) {
                balance = true;
            } else {
                levels.add(Expr.input(line.level()));
            }
        }
        Expr more = Expr.sum(levels).minus(Expr.of(1));
        Expr apart = balance ? more : more.max(Expr.of(BigDecimal.ZERO).minus(more));
        Expr allowed = Expr.of(Formula.TOLERANCE);
        return levels.isEmpty() ? null : Expr.ifLess(allowed, apart.rounded(DIGITS), Expr.of(1), Expr.of(0));
    }
}
