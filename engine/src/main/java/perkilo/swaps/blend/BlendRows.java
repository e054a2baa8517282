package perkilo.swaps.blend;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Writes rows over the levels of a blend; a function returns the weight of each ingredient. */
final class BlendRows {

    /**
     * The slack of each bound, as a fraction of the formula: a tenth of what a level is rounded to. Sums of fixed
     * levels may differ in the last digit, and a solver may take that for a contradiction.
     */
    private static final double SLACK = 1e-8;

    private final LinearProgram program;
    private final List<Ingredient> ingredients;

    BlendRows(LinearProgram program, List<Ingredient> ingredients) {
        this.program = program;
        this.ingredients = ingredients;
    }

    /** The weighted sum of the levels stays between two bounds, which may be infinite. */
    void between(double lower, ToDoubleFunction<Ingredient> weight, double upper) {
        double[] weights = new double[program.size()];
        for (int i = 0; i < ingredients.size(); i++) {
            weights[i] = weight.applyAsDouble(ingredients.get(i));
        }
        program.row(weights, lower - SLACK, upper + SLACK);
    }

    /** The weighted sum of the levels as they are now. */
    double now(ToDoubleFunction<Ingredient> weight) {
        return ingredients.stream()
                .mapToDouble(one -> weight.applyAsDouble(one) * one.now().doubleValue())
                .sum();
    }
}
