package perkilo.swaps.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.model.Material;
import perkilo.oracle.LpText;
import perkilo.oracle.Solver;
import perkilo.swaps.Kit;
import perkilo.swaps.facts.Hlb;
import perkilo.swaps.lp.OjalgoSolver;

/**
 * Blends with at most k changes, and the published linear programs, against a general solver: both find the same cost.
 */
@Tag("oracle")
final class BlendsAgainstSolverTest {

    private static final int SECONDS = 60;
    private static final int HELD = 4;
    private static final int PANTRY = 14;

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
        return IntStream.range(0, 60)
                .mapToObj(i -> Arguments.of(
                        List.of(Kind.OILS, Kind.EMULSIFIERS, Kind.SURFACTANTS).get(i % 3), i, i % 4));
    }

    @ParameterizedTest(name = "{0}, number {1}, at most {2} in and out")
    @MethodSource("blends")
    void blends_cost_the_same(Kind kind, int seed, int mostChanged) {
        List<Ingredient> pantry = pantry(kind, seed);
        BlendModel model = model(kind, pantry);

        Solver.Answer theirs = Solver.GLPSOL.solve(model.text(mostChanged), SECONDS);
        BlendSearch.Answer ours = BlendSearch.find(
                        new BlendProgram(pantry, rules(kind, pantry)).program(mostChanged), new OjalgoSolver())
                .orElseThrow();

        assertThat(theirs.optimal()).isTrue();
        assertThat(ours.proven()).isTrue();
        double cost = model.cost(theirs.values());
        assertThat(ours.cost()).isCloseTo(cost, within(2e-5 * cost));
    }

    private static BlendModel model(Kind kind, List<Ingredient> pantry) {
        BlendModel model = new BlendModel(pantry);
        return switch (kind) {
            case OILS -> model.oils();
            case EMULSIFIERS -> model.emulsifiers();
            case SURFACTANTS -> model.surfactants();
            default -> throw new IllegalArgumentException(kind + " has no model");
        };
    }

    private static List<Keeps> rules(Kind kind, List<Ingredient> pantry) {
        Hlb required = Hlb.NOTHING;
        Hlb emulsifiers = Hlb.NOTHING;
        for (Ingredient one : pantry) {
            required = required.plus(one.now(), one.material().traits().requiredHlb());
            emulsifiers = emulsifiers.plus(one.now(), one.material().traits().hlb());
        }
        Set<String> charges = pantry.stream()
                .filter(Ingredient::isIn)
                .map(one -> KeptCharges.charge(one.material()))
                .collect(Collectors.toSet());
        return switch (kind) {
            case OILS -> List.of(new KeptTotal(), new KeptSpreading(0.1), new KeptRequiredHlb(required, 1));
            case EMULSIFIERS ->
                List.of(
                        new KeptTotal(),
                        new KeptEmulsifierHlb(Hlb.NOTHING, emulsifiers, 1),
                        new KeptCharges(charges, 0.1, one -> 1));
            case SURFACTANTS ->
                List.of(
                        new KeptActive(new Kit()
                                .line("A", "", "90", Kit.catalogued("Water"))
                                .recipe()
                                .portions()
                                .get(0)),
                        new KeptCharges(charges, 0.1, one -> KeptActive.active(one.material())));
            default -> throw new IllegalArgumentException(kind + " has no rules here");
        };
    }

    /** Materials of the catalogue of which the facts are known; levels, ranges and prices are invented. */
    private static List<Ingredient> pantry(Kind kind, int seed) {
        Random random = new Random(seed);
        List<Material> materials = new ArrayList<>(Kit.catalogue().stream()
                .filter(material -> Kind.of(material).filter(kind::equals).isPresent())
                .filter(known(kind))
                .toList());
        Collections.shuffle(materials, random);
        List<Ingredient> pantry = new ArrayList<>();
        Set<String> charges =
                materials.stream().limit(HELD).map(KeptCharges::charge).collect(Collectors.toSet());
        for (Material material : materials) {
            boolean in = pantry.size() < HELD;
            if (pantry.size() < PANTRY && (kind == Kind.OILS || charges.contains(KeptCharges.charge(material)))) {
                BigDecimal now = in ? BigDecimal.valueOf(10 + random.nextInt(50), 3) : BigDecimal.ZERO;
                double least = random.nextInt(4) == 0 ? 0 : (1 + random.nextInt(10)) / 1000.0;
                double most = (30 + random.nextInt(80)) / 1000.0;
                pantry.add(new Ingredient(
                        material,
                        now,
                        in ? Math.min(least, now.doubleValue()) : least,
                        Math.max(most, now.doubleValue()),
                        BigDecimal.valueOf(200 + random.nextInt(3000), 2),
                        0));
            }
        }
        return pantry;
    }

    private static Predicate<Material> known(Kind kind) {
        return switch (kind) {
            case OILS -> material -> !material.traits().spreadingClass().isBlank();
            case EMULSIFIERS -> material -> material.traits().hlb() != null;
            default ->
                material -> material.traits().active() != null
                        && !material.traits().charge().isBlank();
        };
    }
}
