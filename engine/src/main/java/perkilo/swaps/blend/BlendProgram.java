package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.swaps.facts.NaturalOrigin;

/**
 * A blend as a linear program. Variables: the level of each ingredient, and beside it how far it counts as being in, 0
 * to 1, with {@code least · in ≤ level ≤ most · in}.
 *
 * <p>Rows: the total stays; the share of each spreading class, the unknown one too, stays within the tolerance; the
 * required HLB of what is known stays within the band, and what is not known does not grow beyond the tolerance;
 * natural origin content does not fall below what has to be kept; so many at most come in and go out.
 */
final class BlendProgram {

    private final List<Ingredient> ingredients;
    private final BlendFinder.Bounds bounds;
    private final double total;
    private final double[] now;

    BlendProgram(List<Ingredient> ingredients, BlendFinder.Bounds bounds) {
        this.ingredients = ingredients;
        this.bounds = bounds;
        this.now = ingredients.stream()
                .mapToDouble(ingredient -> ingredient.now().doubleValue())
                .toArray();
        this.total = Arrays.stream(now).sum();
    }

    /**
     * The program.
     *
     * @param mostChanged at most so many come in, and at most so many go out
     * @param naturalOrigin what the blend has to bring, as a fraction of the formula; null for nothing
     */
    LinearProgram program(int mostChanged, @Nullable BigDecimal naturalOrigin) {
        int size = ingredients.size();
        double[] cost = new double[2 * size];
        double[] most = new double[2 * size];
        for (int i = 0; i < size; i++) {
            cost[i] = ingredients.get(i).perKg().doubleValue();
            most[i] = ingredients.get(i).most();
            most[size + i] = 1;
        }
        LinearProgram program = new LinearProgram(cost, new double[2 * size], most);
        double[] all = new double[2 * size];
        Arrays.fill(all, 0, size, 1);
        program.row(all, total, total);
        spreading(program);
        requiredHlb(program);
        naturalOrigin(program, naturalOrigin);
        inOrOut(program, mostChanged);
        return program;
    }

    private void spreading(LinearProgram program) {
        double tolerance = bounds.spreadingTolerance().doubleValue() * total;
        ingredients.stream().map(Ingredient::spreading).distinct().forEach(spreading -> {
            double[] weights = new double[2 * ingredients.size()];
            double share = 0;
            for (int i = 0; i < ingredients.size(); i++) {
                if (ingredients.get(i).spreading().equals(spreading)) {
                    weights[i] = 1;
                    share += now[i];
                }
            }
            // what is not known to spread alike never counts as equal: it may become less, but not more
            double more = spreading.equals("unknown") ? 0 : tolerance;
            program.row(weights, share - tolerance, share + more);
        });
    }

    private void requiredHlb(LinearProgram program) {
        double weighted = 0;
        double known = 0;
        for (int i = 0; i < ingredients.size(); i++) {
            Double required = ingredients.get(i).requiredHlb();
            if (required != null) {
                weighted += required * now[i];
                known += now[i];
            }
        }
        double[] unknown = new double[2 * ingredients.size()];
        double[] above = new double[2 * ingredients.size()];
        double[] below = new double[2 * ingredients.size()];
        double band = bounds.hlbBand().doubleValue();
        for (int i = 0; i < ingredients.size(); i++) {
            Double required = ingredients.get(i).requiredHlb();
            if (required == null) {
                unknown[i] = 1;
            } else if (known > 0) {
                above[i] = required - weighted / known - band;
                below[i] = required - weighted / known + band;
            }
        }
        program.row(above, Double.NEGATIVE_INFINITY, 0);
        program.row(below, 0, Double.POSITIVE_INFINITY);
        double allowed = total - known + bounds.spreadingTolerance().doubleValue() * total;
        program.row(unknown, Double.NEGATIVE_INFINITY, allowed);
    }

    private void naturalOrigin(LinearProgram program, @Nullable BigDecimal least) {
        if (least == null) {
            return;
        }
        double[] weights = new double[2 * ingredients.size()];
        for (int i = 0; i < ingredients.size(); i++) {
            Figure index = ingredients.get(i).material().traits().naturalOriginIndex();
            weights[i] =
                    index == null ? 0 : NaturalOrigin.counted(index.value()).doubleValue();
        }
        program.row(weights, least.doubleValue(), Double.POSITIVE_INFINITY);
    }

    private void inOrOut(LinearProgram program, int mostChanged) {
        int size = ingredients.size();
        double[] entering = new double[2 * size];
        double[] staying = new double[2 * size];
        int held = 0;
        for (int i = 0; i < size; i++) {
            double[] least = new double[2 * size];
            least[i] = 1;
            least[size + i] = -ingredients.get(i).least();
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
