package perkilo.swaps.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import perkilo.swaps.lp.OjalgoSolver;

/** Linear programs whose answers are published. */
final class LinearChecksTest {

    private static final double FREE = Double.POSITIVE_INFINITY;
    private final SolveLinear solver = new OjalgoSolver();

    /**
     * The cheapest diet of 1939: 77 foods, 9 minima, 39.66 dollars a year.
     *
     * <p>G. J. Stigler, The Cost of Subsistence, Journal of Farm Economics 27(2), 1945; nutrients per dollar spent.
     */
    @Test
    void the_diet_of_1939() throws IOException {
        double[] minimum = {3, 70, 0.8, 12, 5, 1.8, 2.7, 18, 75};
        List<double[]> foods = foods();
        double[] cost = new double[foods.size()];
        double[] most = new double[foods.size()];
        Arrays.fill(cost, 1);
        Arrays.fill(most, FREE);
        LinearProgram program = new LinearProgram(cost, new double[foods.size()], most);
        for (int nutrient = 0; nutrient < minimum.length; nutrient++) {
            int column = nutrient;
            program.row(foods.stream().mapToDouble(food -> food[column]).toArray(), minimum[nutrient], FREE);
        }

        double[] spent = solver.solve(program).orElseThrow();

        assertThat(foods).hasSize(77);
        assertThat(program.costOf(spent) * 365).isCloseTo(39.661732, within(0.005));
        assertThat(Arrays.stream(spent).filter(dollars -> dollars > 1e-9).count())
                .isEqualTo(5);
    }

    /** H. A. Taha, Operations Research: 470.6 lb of corn and 329.4 lb of soybean meal for 437.64 dollars. */
    @Test
    void a_feed_of_two_components() {
        LinearProgram program = new LinearProgram(new double[] {0.30, 0.90}, new double[2], new double[] {FREE, FREE})
                .row(new double[] {1, 1}, 800, FREE)
                .row(new double[] {0.09 - 0.30, 0.60 - 0.30}, 0, FREE)
                .row(new double[] {0.02 - 0.05, 0.06 - 0.05}, -FREE, 0);

        double[] pounds = solver.solve(program).orElseThrow();

        assertThat(pounds[0]).isCloseTo(470.5882, within(0.05));
        assertThat(pounds[1]).isCloseTo(329.4118, within(0.05));
        assertThat(program.costOf(pounds)).isCloseTo(437.6471, within(0.01));
    }

    /** An exercise whose optimum, recomputed, is 51.279 at x = 87/43, y = 54/43. */
    @Test
    void two_kinds_of_sacks() {
        LinearProgram program = new LinearProgram(new double[] {21, 7}, new double[2], new double[] {FREE, FREE})
                .row(new double[] {70, 21}, 168, FREE)
                .row(new double[] {9, 7}, 27, FREE)
                .row(new double[] {7, 1}, 14, FREE);

        double[] sacks = solver.solve(program).orElseThrow();

        assertThat(sacks[0]).isCloseTo(87 / 43.0, within(1e-4));
        assertThat(sacks[1]).isCloseTo(54 / 43.0, within(1e-4));
        assertThat(program.costOf(sacks)).isCloseTo(51.27907, within(1e-4));
    }

    @Test
    void what_can_not_be_met_has_no_answer() {
        LinearProgram program =
                new LinearProgram(new double[] {1}, new double[1], new double[] {1}).row(new double[] {1}, 2, 3);

        assertThat(solver.solve(program)).isEmpty();
    }

    private static List<double[]> foods() throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                LinearChecksTest.class.getResourceAsStream("stigler-foods.csv"), StandardCharsets.UTF_8))) {
            return lines.lines()
                    .skip(1)
                    .map(line -> Arrays.stream(line.split(",", -1))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        }
    }
}
