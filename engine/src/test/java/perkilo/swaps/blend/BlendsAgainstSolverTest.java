package perkilo.swaps.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.oracle.LpText;
import perkilo.oracle.Solver;
import perkilo.swaps.lp.OjalgoSolver;

/**
 * Blends of every kind with at most k changes, and the published linear programs, against a general solver: both find
 * the same cost.
 */
@Tag("oracle")
final class BlendsAgainstSolverTest {

    private static final int FIRST_SECONDS = 10;
    private static final int SECONDS = 1_800;
    private static final int CASES = 24;

    static Stream<LinearProgram> published() {
        return Stream.of(PublishedPrograms.diet(), PublishedPrograms.feed(), PublishedPrograms.sacks());
    }

    @ParameterizedTest(name = "published program {index}")
    @MethodSource("published")
    void published_programs_cost_the_same(LinearProgram program) {
        LpText lp = new LpText();
        for (int i = 0; i < program.size(); i++) {
            lp.cost("x" + i, program.cost(i));
        }
        for (LinearProgram.Row row : program.rows()) {
            if (Double.isFinite(row.lower())) {
                sum(lp, program, row).atLeast(row.lower());
            }
            if (Double.isFinite(row.upper())) {
                sum(lp, program, row).atMost(row.upper());
            }
        }

        Solver.Answer theirs = Solver.GLPSOL.solve(lp.text(), SECONDS);
        double[] ours = new OjalgoSolver().solve(program).orElseThrow();

        assertThat(theirs.optimal()).isTrue();
        double[] values = IntStream.range(0, program.size())
                .mapToDouble(i -> theirs.values().getOrDefault("x" + i, 0.0))
                .toArray();
        assertThat(program.costOf(ours)).isCloseTo(program.costOf(values), within(1e-5 * program.costOf(values)));
    }

    private static LpText.Row sum(LpText lp, LinearProgram program, LinearProgram.Row row) {
        LpText.Row sum = lp.row();
        for (int i = 0; i < program.size(); i++) {
            sum.plus(row.weight(i), "x" + i);
        }
        return sum;
    }

    static Stream<Arguments> blends() {
        return Stream.of(Kind.values())
                .flatMap(kind -> IntStream.range(0, CASES).mapToObj(i -> Arguments.of(kind, i, i % 4)));
    }

    @ParameterizedTest(name = "{0}, number {1}, at most {2} in and out")
    @MethodSource("blends")
    void blends_cost_the_same(Kind kind, int number, int mostChanged) {
        BlendCase blend = BlendCase.of(kind, number);

        BlendSearch.Answer ours = blend.solved(new OjalgoSolver(), mostChanged);
        double theirs = leastCost(new BlendModel(blend), mostChanged, "");

        assertThat(ours.proven()).isTrue();
        assertThat(ours.cost()).isCloseTo(theirs, within(2e-5 * theirs));
    }

    /** Each rule of a kind prevents a cheaper blend in some of the cases above. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void everything_that_is_kept_matters(Kind kind) {
        Map<String, Integer> matters = new TreeMap<>();
        int cheaper = 0;
        for (int number = 0; number < CASES; number++) {
            BlendModel model = new BlendModel(BlendCase.of(kind, number));
            double kept = leastCost(model, number % 4, "");
            cheaper += kept < 0.99 * model.costNow() ? 1 : 0;
            for (String part : model.parts()) {
                boolean binds = leastCost(model, number % 4, part) < kept * (1 - 1e-4);
                matters.merge(part, binds ? 1 : 0, Integer::sum);
            }
        }
        assertThat(cheaper).as("cases with a cheaper blend").isGreaterThan(CASES / 2);
        assertThat(matters)
                .allSatisfy((part, count) -> assertThat(count).as(part).isGreaterThanOrEqualTo(2));
    }

    /** One of the solvers now and then goes round in circles among equals; then the other one is asked. */
    private static double leastCost(BlendModel model, int mostChanged, String without) {
        String text = model.text(mostChanged, without);
        Solver.Answer first = Solver.GLPSOL.solve(text, FIRST_SECONDS);
        Solver.Answer answer = first.optimal() ? first : Solver.CBC.solve(text, SECONDS);
        assertThat(answer.optimal()).as("%s without %s", model, without).isTrue();
        return model.cost(answer.values());
    }
}
