package perkilo.swaps.check;

import java.util.ArrayList;
import java.util.List;
import perkilo.origin.Finding;
import perkilo.swaps.trial.Recipe;

/** All checks of a formula, in the order in which they are told. */
public final class Checks {

    /** Every check there is. */
    static final List<FormulaCheck> ALL = List.of(
            new LawCheck(),
            new CompatibilityCheck(),
            new PlaceCheck(),
            new LevelCheck(),
            new TotalCheck(),
            new SystemCheck(),
            new ClaimCheck(),
            new LabelCheck());

    private Checks() {}

    /** What all checks find in a recipe. */
    public static List<Finding> of(Recipe recipe) {
        Checked checked = new Checked(recipe);
        List<Finding> findings = new ArrayList<>();
        ALL.forEach(check -> findings.addAll(check.of(checked)));
        return findings;
    }
}
