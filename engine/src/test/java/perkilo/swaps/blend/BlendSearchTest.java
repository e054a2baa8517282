package perkilo.swaps.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import perkilo.model.Material;
import perkilo.swaps.Kit;
import perkilo.swaps.facts.Hlb;
import perkilo.swaps.lp.OjalgoSolver;

/** Branch and bound finds what trying every choice of materials finds. */
final class BlendSearchTest {

    private static final List<Material> OILS = Kit.catalogue().stream()
            .filter(material -> material.functions().contains("emollient")
                    && material.traits().useMax() != null
                    && !material.traits().spreadingClass().isBlank())
            .toList();

    @Property(tries = 40)
    void the_answer_is_the_best_of_all_choices(@ForAll @IntRange(max = 100_000) int seed) {
        Random random = new Random(seed);
        List<Ingredient> ingredients = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Material oil = OILS.get(random.nextInt(OILS.size()));
            BigDecimal now = i < 3 ? BigDecimal.valueOf(2 + random.nextInt(6), 2) : BigDecimal.ZERO;
            double most = 0.05 + random.nextInt(10) / 100.0;
            ingredients.add(new Ingredient(
                    oil,
                    now,
                    Math.min(0.01 + random.nextInt(3) / 100.0, i < 3 ? now.doubleValue() : 1),
                    Math.max(most, now.doubleValue()),
                    BigDecimal.valueOf(200 + random.nextInt(2000), 2),
                    0));
        }
        Hlb oils = Hlb.NOTHING;
        for (Ingredient one : ingredients) {
            oils = oils.plus(one.now(), one.material().traits().requiredHlb());
        }
        List<Keeps> kept = List.of(new KeptTotal(), new KeptSpreading(0.15), new KeptRequiredHlb(oils, 1.5));
        LinearProgram program = new BlendProgram(ingredients, kept).program(1);

        BlendSearch.Answer answer =
                BlendSearch.find(program, new OjalgoSolver()).orElseThrow();

        assertThat(answer.proven()).isTrue();
        assertThat(answer.cost()).isCloseTo(bestOfAll(program), within(1e-5));
    }

    private static double bestOfAll(LinearProgram program) {
        int size = program.size() / 2;
        double best = Double.POSITIVE_INFINITY;
        for (int choice = 0; choice < 1 << size; choice++) {
            double[] least = new double[2 * size];
            double[] most = new double[2 * size];
            for (int i = 0; i < size; i++) {
                most[i] = program.most(i);
                least[size + i] = choice >> i & 1;
                most[size + i] = choice >> i & 1;
            }
            Optional<double[]> values = new OjalgoSolver().solve(program.bounded(least, most));
            if (values.isPresent()) {
                best = Math.min(best, program.costOf(values.get()));
            }
        }
        return best;
    }

    /** The levels as they are keep every rule, so where nothing comes in or goes out there is an answer as cheap. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void the_levels_as_they_are_are_an_answer(Kind kind) {
        for (int number = 0; number < 100; number += 4) {
            BlendCase blend = BlendCase.of(kind, number);

            assertThat(blend.solved(new OjalgoSolver(), 0).cost())
                    .as("%s, number %d", kind, number)
                    .isLessThanOrEqualTo(new BlendModel(blend).costNow() * (1 + 1e-5));
        }
    }

    /** Bounds that leave hardly any room beside the levels as they are: a solver is not to find that there is none. */
    @Test
    void narrow_bounds_have_an_answer() {
        BlendCase blend = BlendCase.of(Kind.OILS, 264);

        assertThat(blend.solved(new OjalgoSolver(), 0).cost())
                .isLessThanOrEqualTo(new BlendModel(blend).costNow() * (1 + 1e-5));
    }
}
