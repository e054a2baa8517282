package perkilo.swaps.blend;

import java.util.List;

/**
 * A blend as a linear program. Variables: the level of each ingredient, and how far it counts as being in, 0 to 1, with
 * {@code lowest · in ≤ level ≤ most · in}. If a rule says that too little is known about a material of the blend, its
 * level is fixed.
 *
 * <p>Its rows: what the blend {@link Keeps}, and how many materials may come in and go out.
 */
final class BlendProgram {

    private final List<Ingredient> ingredients;
    private final List<Keeps> kept;

    BlendProgram(List<Ingredient> ingredients, List<Keeps> kept) {
        this.ingredients = ingredients;
        this.kept = kept;
    }

    /**
     * The program.
     *
     * @param mostChanged the most materials that come in, and that go out
     */
    LinearProgram program(int mostChanged) {
        int size = ingredients.size();
        double[] cost = new double[2 * size];
        double[] least = new double[2 * size];
        double[] most = new double[2 * size];
        for (int i = 0; i < size; i++) {
            Ingredient one = ingredients.get(i);
            cost[i] = one.perKg().doubleValue();
            least[i] = isFixed(one) ? one.now().doubleValue() : 0;
            least[size + i] = isFixed(one) ? 1 : 0;
            most[i] = isFixed(one) ? one.now().doubleValue() : one.most();
            most[size + i] = 1;
        }
        LinearProgram program = new LinearProgram(cost, least, most);
        BlendRows rows = new BlendRows(program, ingredients);
        kept.forEach(rule -> rule.addRows(ingredients, rows));
        inOrOut(program, mostChanged);
        return program;
    }

    private boolean isFixed(Ingredient one) {
        return one.isIn() && kept.stream().anyMatch(rule -> rule.fixes(one.material()));
    }

    private void inOrOut(LinearProgram program, int mostChanged) {
        int size = ingredients.size();
        double[] entering = new double[2 * size];
        double[] staying = new double[2 * size];
        int held = 0;
        for (int i = 0; i < size; i++) {
            double[] least = new double[2 * size];
            least[i] = 1;
            least[size + i] = -ingredients.get(i).lowest();
            program.row(least, 0, Double.POSITIVE_INFINITY);
            double[] most = new double[2 * size];
            most[i] = 1;
            most[size + i] = -ingredients.get(i).most();
            program.row(most, Double.NEGATIVE_INFINITY, 0);
            if (ingredients.get(i).isIn()) {
                staying[size + i] = 1;
                held++;
            } else {
                entering[size + i] = 1;
            }
        }
        program.row(entering, 0, mostChanged);
        program.row(staying, held - mostChanged, held);
    }
}
