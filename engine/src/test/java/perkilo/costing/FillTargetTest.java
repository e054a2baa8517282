package perkilo.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static perkilo.costing.Draft.d;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.units.Measure;

/**
 * What the filler is set to.
 *
 * <p>Tolerable negative errors and the packers' rules: Directive 76/211/EEC, Annex I; the rounding of errors in per
 * cent up to the next tenth of a gram or millilitre from memory. Published uses of the table: 15 at 946 and 1,000, 9 at
 * 200 and 250, 10.5 at 350. Targets: the three rules with the normal distribution's 1.9600 (2.5 %) and 3.7190 (1 in
 * 10,000).
 */
final class FillTargetTest {

    @ParameterizedTest(name = "{0} g: {1} g")
    @CsvSource({
        "5, 0.5",
        "15, 1.4",
        "30, 2.7",
        "50, 4.5",
        "75, 4.5",
        "100, 4.5",
        "150, 6.8",
        "200, 9",
        "250, 9",
        "300, 9",
        "350, 10.5",
        "500, 15",
        "946, 15",
        "1000, 15",
        "3000, 45",
        "10000, 150"
    })
    void tolerable_negative_error(BigDecimal nominal, BigDecimal error) {
        assertThat(TolerableError.forNominal(nominal).orElseThrow().of(nominal)).isEqualByComparingTo(error);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "4.999", "10000.001"})
    void outside_the_directive_there_is_none(BigDecimal nominal) {
        assertThat(TolerableError.forNominal(nominal)).isEmpty();
    }

    @ParameterizedTest(name = "{0} g, s.d. {1} g: {2} g")
    @CsvSource({
        "200, 4, 200",
        "50, 1, 50",
        "50, 2.5, 50.4",
        "100, 2, 100",
        "250, 5, 250.8",
        // rule 3: 100 − 2 × 4.5 + 3.72 × 3 = 102.16; rule 2: 100 − 4.5 + 1.96 × 3 = 101.38
        "100, 3, 102.16"
    })
    void the_smallest_mean_that_the_rules_allow(String nominal, String sd, BigDecimal target) {
        FillTarget fill = fill(nominal, Measure.G, null, null, sd);

        assertThat(fill.rule()).isEqualTo(FillTarget.Rule.AVERAGE_QUANTITY);
        assertThat(fill.target()).isCloseTo(target, within(d("0.005")));
        assertThat(fill.giveaway()).isCloseTo(target.subtract(d(nominal)), within(d("0.005")));
    }

    /** 2.5 % and 1 in 10,000 of a normal distribution, by a continued fraction for its tail. */
    @Test
    void the_factors_are_those_of_the_normal_distribution() {
        assertThat(tail(FillTarget.SHORT_BY_ONE.doubleValue())).isCloseTo(0.025, within(0.00005));
        assertThat(tail(FillTarget.SHORT_BY_TWO.doubleValue())).isCloseTo(0.0001, within(0.000001));
    }

    /**
     * At 50.4 g with a deviation of 2.5 g, 2.5 % of the jars lie below 45.5 g and fewer than 1 in 10,000 below 41 g.
     */
    @Test
    void the_target_keeps_the_rules_and_a_little_less_would_not() {
        double target = fill("50", Measure.G, null, null, "2.5").target().doubleValue();

        assertThat(tail((target - 45.5) / 2.5)).isLessThanOrEqualTo(0.02501);
        assertThat(tail((target - 41) / 2.5)).isLessThanOrEqualTo(0.0001);
        assertThat(tail((target - 0.05 - 45.5) / 2.5)).isGreaterThan(0.025);
    }

    @Test
    void a_nominal_fill_is_filled_as_it_stands() {
        FillTarget fill = fill("50", Measure.ML, "0.93", null, null);

        assertThat(fill.rule()).isEqualTo(FillTarget.Rule.NOMINAL);
        assertThat(fill.targetKg()).isEqualByComparingTo("0.0465");
        assertThat(fill.giveaway()).isEqualByComparingTo("0");
        assertThat(fill.tolerable()).isNull();
    }

    /** 200 mL × 1.015 × 0.99 g/mL. */
    @Test
    void an_overfill_is_added() {
        FillTarget fill = fill("200", Measure.ML, "0.99", "0.015", null);

        assertThat(fill.rule()).isEqualTo(FillTarget.Rule.OVERFILL);
        assertThat(fill.target()).isEqualByComparingTo("203");
        assertThat(fill.targetKg()).isEqualByComparingTo("0.20097");
        assertThat(fill.giveawayKg()).isEqualByComparingTo("0.00297");
    }

    /**
     * The directive speaks of millilitres: 1.7 US fl oz are 50.27500025625 mL, whose error is 4.5 mL. With a deviation
     * of 0.1 fl oz = 2.95735295625 mL rule 3 gives 50.27500025625 − 9 + 11.0013529973 = 52.2763532535 mL.
     */
    @Test
    void in_other_units_the_rules_are_the_same() {
        FillTarget fill = fill("1.7", Measure.US_FL_OZ, "0.95", null, "0.1");

        BigDecimal millilitres = fill.target().multiply(d("29.5735295625"));
        assertThat(millilitres).isCloseTo(d("52.2763532535"), within(d("1e-9")));
        assertThat(fill.targetKg()).isCloseTo(d("0.0496625355908"), within(d("1e-12")));
    }

    @Test
    void outside_the_directive_the_nominal_is_filled() {
        FillTarget fill = fill("4", Measure.G, null, null, "1");

        assertThat(fill.target()).isEqualByComparingTo("4");
        assertThat(fill.tolerable()).isNull();
    }

    @Test
    void a_volume_without_a_density_is_an_error() {
        assertThatThrownBy(() -> fill("50", Measure.ML, null, null, null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Balm is filled by volume and needs a density");
    }

    private static FillTarget fill(
            String nominal, Measure unit, @Nullable String density, @Nullable String overfill, @Nullable String sd) {
        Draft.ProductDraft product = new Draft.ProductDraft("Balm", "Balm", nominal, unit);
        product.density = density;
        product.overfill = overfill;
        product.fillerSd = sd;
        return FillTarget.of(product.product());
    }

    /**
     * The part of a normal distribution beyond {@code z} deviations: {@code φ(z) / (z + 1/(z + 2/(z + 3/(z + …))))}
     * (Laplace's continued fraction; Abramowitz and Stegun, 26.2.14).
     */
    private static double tail(double z) {
        double fraction = z;
        for (int k = 200; k > 0; k--) {
            fraction = z + k / fraction;
        }
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) / fraction;
    }
}
