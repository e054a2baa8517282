package perkilo.swaps.closeness;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.Kit;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.Varied;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/** Pairs that the trade would and would not swap, from the classes in which it groups materials. Common practice. */
final class ClosenessTest {

    private static final BigDecimal OFFERED_FROM = SwapOptions.USUAL_CLOSENESS;

    private static Closeness of(String from, String to) {
        Material one = Kit.catalogued(from);
        return Closeness.of(Roles.first(one).orElseThrow(), one, Kit.catalogued(to));
    }

    private static BigDecimal worst(String from, String to) {
        return of(from, to).worst();
    }

    @ParameterizedTest
    @CsvSource({
        "Isopropyl palmitate, Isopropyl myristate",
        "Ethylhexyl palmitate, Ethylhexyl stearate",
        "Dicaprylyl ether, Dicaprylyl carbonate",
        "Cetearyl alcohol, Cetyl alcohol",
        "Cetearyl alcohol, Stearyl alcohol",
        "Carnauba wax, Candelilla wax"
    })
    void close_enough(String from, String to) {
        assertThat(worst(from, to)).isGreaterThanOrEqualTo(OFFERED_FROM);
        assertThat(worst(to, from)).isGreaterThanOrEqualTo(OFFERED_FROM);
    }

    /** A role alone does not make two materials alike. */
    @ParameterizedTest
    @CsvSource({
        "Isohexadecane, Castor oil",
        "Isododecane, Shea butter refined",
        "Dicaprylyl ether, Petrolatum",
        "Cetearyl alcohol, Isopropyl myristate",
        "Carnauba wax, Shea butter refined",
        "Shea butter refined, Ethylhexyl stearate",
        "Shea butter refined, Caprylic/capric triglyceride",
        "Citric acid, Tromethamine"
    })
    void too_far(String from, String to) {
        assertThat(worst(from, to)).isLessThan(OFFERED_FROM);
    }

    /** One INCI name in two viscosity grades: a thin and a thick silicone are not alike. */
    @Test
    void another_grade_of_one_substance_is_compared_by_its_facts() {
        Material thin = Varied.trait(Kit.catalogued("Dimethicone 100 cSt"), "viscosity", Figure.of("5"));
        Material thick = Varied.trait(Kit.catalogued("Dimethicone 100 cSt"), "viscosity", Figure.of("12000"));
        Role silicone = Roles.named("silicone").orElseThrow();

        TraitShare viscosity = Closeness.of(silicone, thin, thick).shares().stream()
                .filter(share -> share.trait().equals("viscosity"))
                .findFirst()
                .orElseThrow();

        assertThat(viscosity.share()).isEqualByComparingTo("0");
        assertThat(viscosity.toString()).isEqualTo("viscosity 5 mPa·s → 12000 mPa·s 0 of 20");
    }

    @Test
    void a_solid_and_a_liquid_have_no_melting_point_in_common() {
        Role ester = Roles.named("emollient ester").orElseThrow();
        Material oil = Varied.trait(Kit.catalogued("Isopropyl palmitate"), "meltsAtC", null);
        Material liquid = Varied.trait(Kit.catalogued("Ethylhexyl palmitate"), "meltsAtC", null);
        Material solid = Varied.trait(oil, "meltsAtC", Figure.of("50"));

        assertThat(melting(ester, oil, solid)).isEqualTo("melts at liquid → 50 °C 0 of 10");
        assertThat(melting(ester, oil, liquid)).isEqualTo("melts at liquid → liquid 10 of 10");
    }

    private static String melting(Role role, Material from, Material to) {
        return Closeness.of(role, from, to).shares().stream()
                .map(TraitShare::toString)
                .filter(words -> words.startsWith("melts at"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_material_is_as_close_to_itself_as_can_be() {
        for (Material material : Kit.catalogue()) {
            Role role = Roles.first(material).orElseThrow();
            Closeness same = Closeness.of(role, material, material);

            boolean scent = role.isOneOf("fragrance") && material.inci().equals("Parfum");
            assertThat(same.best())
                    .as(material.name())
                    .isEqualByComparingTo(scent ? new BigDecimal(15) : new BigDecimal(100));
        }
    }

    @Test
    void the_range_says_how_many_facts_are_unknown() {
        Material one = Kit.catalogued("Isopropyl palmitate");
        Material less = Varied.trait(Kit.catalogued("Isopropyl myristate"), "oxidativeStability", "");
        Closeness closeness = Closeness.of(Roles.first(one).orElseThrow(), one, less);

        assertThat(closeness.unknown()).isEqualTo(1);
        assertThat(closeness.best().subtract(closeness.worst())).isEqualByComparingTo("5");
        assertThat(closeness.range()).matches("\\d+–\\d+, 1 fact unknown");
    }

    @Test
    void every_share_is_shown_with_both_values_and_they_add_up() {
        Closeness closeness = of("Isopropyl palmitate", "Isopropyl myristate");

        assertThat(closeness.shares().stream().mapToInt(TraitShare::weight).sum())
                .isEqualTo(100);
        assertThat(closeness.shares().stream().map(TraitShare::share).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(closeness.worst());
        assertThat(closeness.words()).contains("main role emollient ester → emollient ester 5 of 5");
    }

    /** A misspelt key in the table would never be known of any material. */
    @Test
    void every_fact_of_every_role_is_something_that_is_compared() {
        for (Role role : Roles.all()) {
            List<String> keys =
                    role.facts().stream().flatMap(fact -> fact.oneOf().stream()).toList();
            assertThat(keys).as(role.name()).isNotEmpty().allMatch(Compared::isKey);
        }
    }
}
