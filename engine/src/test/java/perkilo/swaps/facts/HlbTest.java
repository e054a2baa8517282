package perkilo.swaps.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.origin.Figure;

/** Required HLB of oil phases and blends of emulsifiers, as published. */
final class HlbTest {

    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    /** OCL – Oilseeds and fats 2022, article 210096, Table 4: formulations F1 to F3; stearic acid is what differs. */
    @ParameterizedTest(name = "{0} % stearic acid require HLB {1}")
    @CsvSource({"12.5, 10.33", "10.5, 10.04", "8.5, 9.71"})
    void required_hlb_of_published_oil_phases(BigDecimal stearicAcid, BigDecimal published) {
        Hlb oils = Hlb.NOTHING
                .plus(new BigDecimal("1.5"), Figure.of("12"))
                .plus(new BigDecimal("7.5"), Figure.of("11.5"))
                .plus(new BigDecimal("7.5"), Figure.of("3.8"))
                .plus(stearicAcid, Figure.of("15"))
                .plus(new BigDecimal("5"), Figure.of("6.2"));

        assertThat(oils.mean().orElseThrow()).isCloseTo(published, within(HUNDREDTH));
    }

    /** A lecture on pharmaceutics: 10 g of sorbitan stearate (4.7) and 20 g of polysorbate 60 (14.9) have HLB 11.5. */
    @Test
    void a_blend_of_two_emulsifiers() {
        Hlb blend =
                Hlb.NOTHING.plus(new BigDecimal("10"), Figure.of("4.7")).plus(new BigDecimal("20"), Figure.of("14.9"));

        assertThat(blend.mean().orElseThrow()).isEqualByComparingTo("11.5");
    }

    /** PMC3969497, Table I: per cent of polysorbate 80 (15.0) in a blend with sorbitan oleate (4.3). */
    @ParameterizedTest(name = "HLB {0}: {1} % polysorbate 80")
    @CsvSource({
        "8, 34.6",
        "9, 43.9",
        "10, 53.3",
        "10.5, 57.9",
        "11, 62.6",
        "12, 72.0",
        "13, 81.3",
        "14, 90.7",
        "15, 100"
    })
    void the_share_of_the_high_emulsifier(BigDecimal target, BigDecimal percent) {
        BigDecimal share = Hlb.shareOfHigh(new BigDecimal("4.3"), new BigDecimal("15.0"), target)
                .orElseThrow();

        assertThat(share.movePointRight(2)).isCloseTo(percent, within(new BigDecimal("0.1")));
    }

    @Test
    void a_target_outside_both_emulsifiers_can_not_be_reached() {
        assertThat(Hlb.shareOfHigh(new BigDecimal("3.8"), new BigDecimal("9.7"), new BigDecimal("14.5")))
                .isEmpty();
    }

    @Test
    void what_is_not_known_does_not_move_the_mean() {
        Hlb known = Hlb.NOTHING.plus(BigDecimal.ONE, Figure.of("10"));

        assertThat(known.plus(BigDecimal.TEN, null).mean()).isEqualTo(known.mean());
    }

    /** Worked examples of pharmacy lectures and exercises: what the oils require, and grams of the two emulsifiers. */
    @ParameterizedTest(name = "required {2}: {4} g of the low one, {5} g of the high one")
    @CsvSource({
        "4.7, 14.9, 12, 5, 1.4216, 3.5784",
        "4.3, 14.9, 14.5, 40, 1.5094, 38.4906",
        "4.7, 16.7, 14, 25, 5.625, 19.375",
        "4.3, 15, 10.5, 5, 2.1028, 2.8972"
    })
    void grams_of_two_emulsifiers(
            BigDecimal low,
            BigDecimal high,
            BigDecimal required,
            BigDecimal together,
            BigDecimal ofLow,
            BigDecimal ofHigh) {
        BigDecimal grams = Hlb.shareOfHigh(low, high, required).orElseThrow().multiply(together);

        assertThat(grams).isCloseTo(ofHigh, within(new BigDecimal("0.01")));
        assertThat(together.subtract(grams)).isCloseTo(ofLow, within(new BigDecimal("0.01")));
    }

    /** A pharmaceutics lecture: 30 g of mineral oil, 1.5 g of wool fat and 1 g of cetyl alcohol require 12. */
    @Test
    void an_oil_phase_of_three_requires_twelve() {
        Hlb oils = Hlb.NOTHING
                .plus(new BigDecimal("30"), Figure.of("12"))
                .plus(new BigDecimal("1.5"), Figure.of("10"))
                .plus(BigDecimal.ONE, Figure.of("15"));

        assertThat(oils.mean().orElseThrow()).isCloseTo(new BigDecimal("12"), within(new BigDecimal("0.01")));
    }
}
