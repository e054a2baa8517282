package perkilo.swaps.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.swaps.lp.OjalgoSolver;

/** Linear programs whose answers are published, solved by what solves blends. */
final class LinearChecksTest {

    private final SolveLinear solver = new OjalgoSolver();

    /** 39.66 dollars a year, to the optimum that other solvers find; Stigler's own trial and error came to 39.93. */
    @Test
    void the_diet_of_1939() {
        LinearProgram program = PublishedPrograms.diet();

        double[] spent = solver.solve(program).orElseThrow();

        assertThat(program.size()).isEqualTo(77);
        assertThat(program.costOf(spent)).isCloseTo(0.108662278207, within(1e-9));
        assertThat(program.costOf(spent) * 365).isCloseTo(39.661732, within(0.005));
        assertThat(Arrays.stream(spent).filter(dollars -> dollars > 1e-9).count())
                .isEqualTo(5);
    }

    @ParameterizedTest(name = "{0}: {1} dollars a year")
    @CsvSource({
        "Wheat Flour (Enriched), 10.774458",
        "Liver (Beef), 0.690783",
        "Cabbage, 4.093269",
        "Spinach, 1.827796",
        "'Navy Beans, Dried', 22.275426"
    })
    void what_the_diet_of_1939_buys(String food, double aYear) {
        double[] spent = solver.solve(PublishedPrograms.diet()).orElseThrow();

        assertThat(spent[PublishedPrograms.food(food)] * 365).isCloseTo(aYear, within(0.01));
    }

    /** Calories, calcium, vitamin A, riboflavin and ascorbic acid are just met; there is more of the others. */
    @ParameterizedTest
    @CsvSource({"0, true", "1, false", "2, true", "3, false", "4, true", "5, false", "6, true", "7, false", "8, true"})
    void what_the_diet_of_1939_is_short_of(int nutrient, boolean justMet) {
        double[] spent = solver.solve(PublishedPrograms.diet()).orElseThrow();
        double[] perDollar = PublishedPrograms.perDollar(nutrient);
        double eaten = 0;
        for (int food = 0; food < spent.length; food++) {
            eaten += spent[food] * perDollar[food];
        }

        double least = PublishedPrograms.daily(nutrient);

        assertThat(eaten).isGreaterThanOrEqualTo(least * (1 - 1e-9));
        assertThat(eaten < least * (1 + 1e-9)).isEqualTo(justMet);
    }

    /** H. A. Taha, Operations Research: 470.6 lb of corn and 329.4 lb of soybean meal for 437.64 dollars. */
    @Test
    void a_feed_of_two_components() {
        LinearProgram program = PublishedPrograms.feed();

        double[] pounds = solver.solve(program).orElseThrow();

        assertThat(pounds[0]).isCloseTo(470.5882, within(0.05));
        assertThat(pounds[1]).isCloseTo(329.4118, within(0.05));
        assertThat(program.costOf(pounds)).isCloseTo(437.6471, within(0.01));
    }

    /** The optimum, recomputed, is 51.279 at x = 87/43, y = 54/43. */
    @Test
    void two_kinds_of_sacks() {
        LinearProgram program = PublishedPrograms.sacks();

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
}
