package perkilo.swaps.closeness;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.swaps.Kit;

/** Pairs that the trade would and would not swap, from the classes in which it groups emollients. Common practice. */
final class ClosenessTest {

    private static final BigDecimal OFFERED_FROM = new BigDecimal(30);

    private static BigDecimal score(String from, String to) {
        return Closeness.of(Kit.catalogued(from), Kit.catalogued(to)).score();
    }

    @ParameterizedTest
    @CsvSource({
        "Isopropyl palmitate, Isopropyl myristate",
        "Ethylhexyl palmitate, Ethylhexyl stearate",
        "Dicaprylyl ether, Dicaprylyl carbonate",
        "Caprylic/capric triglyceride, Triheptanoin",
        "Sunflower oil high oleic, Sweet almond oil"
    })
    void close_enough(String from, String to) {
        assertThat(score(from, to)).isGreaterThanOrEqualTo(OFFERED_FROM);
        assertThat(score(to, from)).isGreaterThanOrEqualTo(OFFERED_FROM);
    }

    /** Solids are judged by what solids have: melting point and what else they do, not by spreading and viscosity. */
    @ParameterizedTest
    @CsvSource({
        "Cetearyl alcohol, Cetyl alcohol",
        "Cetearyl alcohol, Stearyl alcohol",
        "Shea butter refined, Mango butter",
        "Carnauba wax, Candelilla wax"
    })
    void solids_close_enough(String from, String to) {
        assertThat(score(from, to)).isGreaterThanOrEqualTo(OFFERED_FROM);
        assertThat(score(to, from)).isGreaterThanOrEqualTo(OFFERED_FROM);
    }

    @Test
    void a_fatty_alcohol_is_nearer_to_another_than_to_a_wax_a_butter_or_an_oil() {
        assertThat(score("Cetearyl alcohol", "Cetyl alcohol"))
                .isGreaterThan(score("Cetearyl alcohol", "Beeswax white"))
                .isGreaterThan(score("Cetearyl alcohol", "Shea butter refined"))
                .isGreaterThan(score("Cetearyl alcohol", "Castor oil"));
    }

    @ParameterizedTest
    @CsvSource({
        "Isohexadecane, Castor oil",
        "Isododecane, Shea butter refined",
        "Dicaprylyl ether, Petrolatum",
        "Cetearyl alcohol, Isopropyl myristate",
        "Cetearyl alcohol, Petrolatum",
        "Carnauba wax, Shea butter refined",
        "Shea butter refined, Ethylhexyl stearate",
        "Shea butter refined, Caprylic/capric triglyceride"
    })
    void too_far(String from, String to) {
        assertThat(score(from, to)).isLessThan(OFFERED_FROM);
    }

    @Test
    void another_supplier_of_one_substance_with_the_same_active_matter_is_the_same() {
        assertThat(score("Glycerin", "Glycerin")).isEqualByComparingTo("100");
    }

    /** The scent of a fragrance is not known: another fragrance is far, even with the same name on the label. */
    @ParameterizedTest
    @CsvSource({"Fragrance Orchard Rain, Benzyl alcohol, 30", "Fragrance Orchard Rain, Fragrance Orchard Rain, 50"})
    void a_scent_is_never_known_to_be_alike(String from, String to, int below) {
        assertThat(score(from, to)).isLessThan(BigDecimal.valueOf(below));
    }

    @Test
    void every_share_is_shown_and_they_add_up() {
        Closeness closeness =
                Closeness.of(Kit.catalogued("Isopropyl palmitate"), Kit.catalogued("Isopropyl myristate"));

        assertThat(closeness.shares().stream().mapToInt(TraitShare::weight).sum())
                .isEqualTo(100);
        assertThat(closeness.shares().stream().map(TraitShare::share).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(closeness.score());
        assertThat(closeness.words()).contains("spreading class 25 of 25");
    }

    @Test
    void the_weights_of_every_function_add_up_to_100() {
        for (String material : new String[] {
            "Glycerin",
            "Fragrance Orchard Rain",
            "Cetyl alcohol",
            "Isopropyl myristate",
            "Polysorbate 60",
            "Phenoxyethanol",
            "Tocopherol",
            "Xanthan gum",
            "Decyl glucoside",
            "Citric acid",
            "Cetrimonium chloride solution"
        }) {
            Closeness closeness = Closeness.of(Kit.catalogued(material), Kit.catalogued("Isododecane"));

            assertThat(closeness.shares().stream().mapToInt(TraitShare::weight).sum())
                    .as(material)
                    .isEqualTo(100);
        }
    }
}
