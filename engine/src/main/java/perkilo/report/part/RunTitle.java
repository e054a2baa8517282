package perkilo.report.part;

import java.util.List;
import perkilo.costing.RunNeeds;
import perkilo.sheet.Expr;
import perkilo.sheet.ResultSheet;

/** A run's title, with its live units or kilograms: {@code 1,000 × Hand balm}. */
public final class RunTitle {

    private static final int DIGITS_OF_KILOGRAMS = 3;

    private RunTitle() {}

    /**
     * The title's parts.
     *
     * @param behind words after it
     */
    public static List<ResultSheet.Part> of(RunNeeds needs, MakingPart making, String behind) {
        Expr units = making.units();
        return units == null
                ? List.of(
                        new ResultSheet.Rounded(making.charged(), DIGITS_OF_KILOGRAMS),
                        new ResultSheet.Words(" kg of " + needs.formula().name() + behind))
                : List.of(new ResultSheet.Fixed(units, 0), new ResultSheet.Words(" × " + needs.name() + behind));
    }
}
