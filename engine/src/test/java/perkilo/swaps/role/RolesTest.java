package perkilo.swaps.role;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.swaps.Kit;
import perkilo.swaps.Varied;

/** The table of roles, and the roles of materials: as typed, as catalogued, or none. */
final class RolesTest {

    private static Material material(String name, String inci, String... roles) {
        Traits traits = Traits.builder().words(Fact.ROLE, List.of(roles)).build();
        return new Material(name, inci, List.of(), null, null, Figure.ZERO, null, traits, Origin.NONE);
    }

    private static List<String> names(Material material) {
        return Roles.of(material).stream().map(Role::name).toList();
    }

    @Test
    void the_weights_of_every_role_add_up_to_100() {
        assertThat(Roles.all())
                .hasSizeGreaterThan(40)
                .allSatisfy(role -> assertThat(
                                role.facts().stream().mapToInt(RoleFact::weight).sum())
                        .as(role.name())
                        .isEqualTo(100));
    }

    @ParameterizedTest
    @CsvSource({
        "o/w emulsifier, O/W emulsifier",
        "Emollient esters, emollient ester",
        "co emulsifier, co-emulsifier",
        "NON-IONIC polymer thickener, nonionic polymer thickener"
    })
    void capitals_marks_and_the_plural_make_no_difference(String typed, String role) {
        assertThat(Roles.named(typed)).map(Role::name).contains(role);
    }

    @Test
    void a_function_of_the_glossary_is_no_role() {
        assertThat(Roles.named("emulsifying")).isEmpty();
        assertThat(Roles.named("emollient")).isEmpty();
    }

    @Test
    void typed_roles_count_before_the_catalogue() {
        assertThat(names(material("Glycerin", "Glycerin", "solvent"))).containsExactly("solvent");
    }

    @Test
    void a_word_that_is_no_role_is_not_replaced_by_a_guess() {
        assertThat(names(material("Glycerin", "Glycerin", "humectent"))).isEmpty();
    }

    @Test
    void the_catalogue_knows_a_material_by_its_name_or_its_inci_name() {
        assertThat(Catalogue.isThere()).as("the catalogue is shipped").isTrue();
        List<String> glycerin = names(Kit.catalogued("Glycerin"));
        assertThat(glycerin).contains("humectant");
        assertThat(names(material("Glycerin", ""))).isEqualTo(glycerin);
        assertThat(names(material("Vegetable glycerine 99.7", "GLYCERIN"))).isEqualTo(glycerin);
        assertThat(names(material("Mystery oil", "Mysterium"))).isEmpty();
    }

    @Test
    void of_one_inci_name_only_what_all_rows_agree_on_counts() {
        List<Material> dimethicones = Kit.catalogue().stream()
                .filter(material -> material.inci().equals("Dimethicone"))
                .toList();
        assertThat(dimethicones).isNotEmpty();
        for (String role : names(material("Some silicone", "Dimethicone"))) {
            assertThat(dimethicones).allSatisfy(one -> assertThat(names(one)).contains(role));
        }
    }

    @Test
    void the_name_of_another_substance_does_not_count() {
        assertThat(names(material("Glycerin", "Propanediol"))).isEqualTo(names(Kit.catalogued("Propanediol")));
    }

    @Test
    void a_line_has_the_first_role_that_fits_its_phase_and_the_formula() {
        Material both =
                Varied.trait(Kit.catalogued("Sorbitan stearate"), "role", List.of("W/O emulsifier", "co-emulsifier"));
        Kit cream = new Kit()
                .line("A", "75", "70", Kit.catalogued("Water"))
                .line("B", "75", "20", Kit.catalogued("Isopropyl palmitate"))
                .line("B", "75", "4", Kit.catalogued("Polysorbate 60"))
                .line("B", "75", "6", both);
        Kit balm = new Kit()
                .line("B", "75", "94", Kit.catalogued("Isopropyl palmitate"))
                .line("B", "75", "6", both);

        assertThat(cream.recipe().roleOf(3).role()).extracting(String::valueOf).isEqualTo("co-emulsifier");
        assertThat(balm.recipe().roleOf(1).role()).extracting(String::valueOf).isEqualTo("W/O emulsifier");
    }

    @Test
    void a_role_of_the_other_phase_is_not_taken() {
        Material misplaced = Varied.trait(Kit.catalogued("Glycerin"), "role", List.of("butter"));
        Kit gel = new Kit().line("A", "", "95", Kit.catalogued("Water")).line("A", "", "5", misplaced);

        assertThat(gel.recipe().roleOf(1).role()).isNull();
        assertThat(gel.recipe().roleOf(1).materials()).hasSize(1);
    }

    @Test
    void salt_thickens_where_there_are_surfactants_alone() {
        Material salt = Varied.trait(Kit.catalogued("Sodium chloride"), "role", List.of("electrolyte thickener"));
        Kit shampoo = new Kit()
                .line("A", "", "80", Kit.catalogued("Water"))
                .line("A", "", "18", Kit.catalogued("Sodium laureth sulfate 70 %"))
                .line("A", "", "2", salt);
        Kit toner = new Kit().line("A", "", "98", Kit.catalogued("Water")).line("A", "", "2", salt);

        assertThat(shampoo.recipe().roleOf(2).role()).isNotNull();
        assertThat(toner.recipe().roleOf(1).role()).isNull();
    }
}
