package perkilo.swaps.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The most of a salt where the law limits its acid.
 *
 * <p>Limits: Regulation (EC) No 1223/2009, Annex V, nos. 1, 4 and 13. Conversion by molar mass.
 */
final class PublishedLimitTest {

    @ParameterizedTest(name = "{0}, rinsed off {1}: at most {2} %")
    @CsvSource({
        "Sodium Benzoate, false, 0.59",
        "Sodium Benzoate, true, 2.95",
        "Potassium Sorbate, false, 0.8038",
        "Potassium Sorbate, true, 0.8038",
        "Sodium Dehydroacetate, false, 0.6784",
        "Benzoic Acid, false, 0.5",
        "sorbic acid, true, 0.6",
        "Phenoxyethanol, false, 1.0"
    })
    void the_limit_of_the_substance_itself(String inci, boolean rinseOff, BigDecimal percent) {
        PublishedLimit limit = PublishedLimit.of(inci, rinseOff).orElseThrow();

        assertThat(limit.maxOfSubstance().movePointRight(2)).isCloseTo(percent, within(new BigDecimal("0.001")));
        assertThat(limit.source()).isNotBlank();
    }

    @Test
    void a_salt_at_its_limit_is_the_acid_at_its_limit() {
        PublishedLimit limit = PublishedLimit.of("Sodium Benzoate", false).orElseThrow();

        assertThat(limit.asLimited(limit.maxOfSubstance())).isCloseTo(limit.max(), within(new BigDecimal("1e-12")));
    }
}
