package perkilo.swaps.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Fact;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.Kit;
import perkilo.swaps.Varied;

/** Levels by what a role is dosed by: active matter, equivalents, moles, usual levels. */
final class DosingTest {

    private static final Material WATER = Kit.catalogued("Water");
    private static final Material LAURETH = Kit.catalogued("Sodium laureth sulfate 70 %");
    private static final Material COCO = Kit.catalogued("Sodium coco-sulfate");

    /** 10 % × 70 / 92 = 7.608696 %, weighed as 7.61 %; the water takes the 2.39 % that are left. */
    @Test
    void the_balance_takes_the_difference() {
        Trial trial = new Kit()
                .line("A", "", "q.s.", WATER)
                .line("A", "", "10", LAURETH)
                .trial(1, COCO);

        assertThat(trial.dose().to()).isEqualByComparingTo("0.0761");
        assertThat(trial.after().portions().get(0).level()).isEqualByComparingTo("0.9239");
        assertThat(trial.after().formula().lines().get(0).isBalance()).isTrue();
        assertThat(trial.dose().cautions()).isEmpty();
    }

    @Test
    void without_a_balance_line_process_water_takes_it() {
        Trial trial = new Kit()
                .line("A", "", "90", WATER)
                .line("A", "", "10", LAURETH)
                .trial(1, COCO);
        Formula after = trial.after().formula();

        assertThat(trial.dose().balanced()).isTrue();
        assertThat(after.stated().doubleValue()).isEqualTo(1);
        assertThat(trial.dose().cautions())
                .as("a typed level changes")
                .containsExactly("No line takes the balance (q.s.), so Water goes from 90 % to 92.39 %.");
    }

    @Test
    void a_balance_that_has_too_little_to_give_is_reported() {
        Material weak = Kit.catalogued("Ammonium lauryl sulfate solution");
        Trial trial = new Kit()
                .line("A", "", "q.s.", WATER)
                .line("A", "", "60", LAURETH)
                .trial(1, weak);

        assertThat(trial.dose().balanced()).isFalse();
        assertThat(trial.dose().why()).startsWith("Water has only 40 % to give, but ");
    }

    @Test
    void active_matter_that_is_not_known_keeps_the_level_and_is_a_caution() {
        Material unknown = Varied.trait(COCO, "active", null);
        Trial trial = new Kit()
                .line("A", "", "q.s.", WATER)
                .line("A", "", "10", LAURETH)
                .trial(1, unknown);

        assertThat(trial.dose().to()).isEqualByComparingTo("0.1");
        assertThat(trial.dose().cautions())
                .containsExactly("The active matter of Sodium coco-sulfate is not known, so the level stays the same.");
    }

    /**
     * Equivalents by standard atomic weights: triethanolamine C6H15NO3 has 149.190 g/mol and takes one proton, sodium
     * hydroxide has 39.997 g/mol. 1.2 g of the first neutralise as much as 1.2 / 149.190 × 39.997 / 0.1 = 3.217 g of a
     * 10 % solution of the second.
     */
    @Test
    void bases_are_dosed_by_equivalents() {
        double carbon = 12.011;
        double hydrogen = 1.008;
        double nitrogen = 14.007;
        double oxygen = 15.999;
        double sodium = 22.990;
        double amine = 6 * carbon + 15 * hydrogen + nitrogen + 3 * oxygen;
        double lye = sodium + oxygen + hydrogen;
        Material triethanolamine = Kit.catalogued("Triethanolamine");
        Material solution = Kit.catalogued("Sodium hydroxide 10 % solution");
        double purity = Kit.number(triethanolamine.traits().active());

        Trial trial = new Kit()
                .line("A", "", "q.s.", WATER)
                .line("A", "", "1.2", triethanolamine)
                .trial(1, solution);

        assertThat(Kit.number(triethanolamine.traits().figure(Fact.EQUIVALENT_WEIGHT)))
                .isCloseTo(amine, within(0.05));
        assertThat(Kit.number(solution.traits().figure(Fact.EQUIVALENT_WEIGHT))).isCloseTo(lye, within(0.05));
        assertThat(trial.dose().to().doubleValue()).isCloseTo(0.012 * purity / amine * lye / 0.1, within(0.00006));
        assertThat(trial.dose().to().doubleValue()).isCloseTo(0.032, within(0.0005));
        assertThat(trial.dose().cautions()).anyMatch(caution -> caution.contains("pH decides"));
    }

    /** Citric acid C6H8O7 has 192.12 g/mol and three acid groups, lactic acid C3H6O3 90.08 g/mol and one. */
    @Test
    void acids_are_dosed_by_equivalents() {
        Material citric = Kit.catalogued("Citric acid");
        Material lactic = Kit.catalogued("Lactic acid 80 %");
        double moles = 0.005 * Kit.number(citric.traits().active()) / (192.12 / 3);

        Trial trial = new Kit()
                .line("A", "", "q.s.", WATER)
                .line("A", "", "0.5", citric)
                .trial(1, lactic);

        assertThat(trial.dose().to().doubleValue())
                .isCloseTo(moles * 90.08 / Kit.number(lactic.traits().active()), within(0.0001));
    }

    /** A binds 1.0 g of metal ions a gram less than B: the level follows the grams for one mole. */
    @Test
    void chelators_are_dosed_by_what_they_bind() {
        Material edta = bound("Disodium EDTA", "1", "370");
        Material other = bound("Sodium gluconate", "0.5", "740");
        Trial trial = new Kit()
                .line("A", "", "q.s.", WATER)
                .line("A", "", "0.1", edta)
                .trial(1, other);

        assertThat(trial.dose().to()).isEqualByComparingTo("0.004");
    }

    private static Material bound(String name, String active, String weight) {
        Material one = Varied.trait(Kit.catalogued(name), "active", Figure.of(active));
        Material chelator = Varied.trait(one, "role", List.of("chelator"));
        return Varied.trait(chelator, "equivalentWeight", Figure.of(weight));
    }

    /** Usual levels 0.1 to 0.5 % and 0.2 to 1 %: the middle goes from 0.3 to 0.6 %, so 0.2 % becomes 0.4 %. */
    @Test
    void thickeners_start_at_the_same_place_within_the_usual_levels() {
        Material one = usual("Xanthan gum", "0.001", "0.005");
        Material other = usual("Sclerotium gum", "0.002", "0.01");
        Trial trial =
                new Kit().line("A", "", "q.s.", WATER).line("A", "", "0.2", one).trial(1, other);

        assertThat(trial.dose().to()).isEqualByComparingTo("0.004");
        assertThat(trial.dose().cautions()).anyMatch(caution -> caution.contains("starting point"));
    }

    private static Material usual(String name, String least, String most) {
        Material one = Varied.trait(Kit.catalogued(name), "useMin", Figure.of(least));
        return Varied.trait(Varied.trait(one, "role", List.of("gum")), "useMax", Figure.of(most));
    }

    @ParameterizedTest
    @CsvSource({"0.0760869, 0.0761", "0.00100049, 0.001", "0.00012345, 0.000123", "0.000009996, 0.00001"})
    void levels_are_what_a_bench_balance_weighs(String exact, String weighed) {
        assertThat(BenchBalance.rounded(new BigDecimal(exact))).isEqualByComparingTo(weighed);
    }
}
