package perkilo.swaps.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
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

/** The order of ingredients by Regulation (EC) No 1223/2009, Article 19(1)(g). */
final class IngredientListTest {

    private static Material named(String inci, String... functions) {
        return new Material(
                inci + " (material)",
                inci,
                List.of(functions),
                null,
                null,
                Figure.ZERO,
                null,
                Traits.UNKNOWN,
                Origin.NONE);
    }

    @Test
    void falling_by_weight_and_up_to_one_per_cent_behind() {
        IngredientList list = IngredientList.of(new Kit()
                .line("A", "", "4", named("Glyceryl Stearate"))
                .line("A", "", "0.5", named("Tocopherol"))
                .line("A", "", "70.2", named("Aqua"))
                .line("A", "", "5", named("Glycerin"))
                .line("A", "", "12", named("Caprylic/Capric Triglyceride"))
                .line("A", "", "4", named("Cetearyl Alcohol"))
                .line("A", "", "0.9", named("Phenoxyethanol"))
                .line("A", "", "0.4", named("Parfum"))
                .line("A", "", "3", named("Isopropyl Palmitate"))
                .recipe());

        assertThat(list.names())
                .startsWith(
                        "Aqua",
                        "Caprylic/Capric Triglyceride",
                        "Glycerin",
                        "Cetearyl Alcohol",
                        "Glyceryl Stearate",
                        "Isopropyl Palmitate");
        assertThat(list.names().subList(6, 9)).containsExactlyInAnyOrder("Phenoxyethanol", "Tocopherol", "Parfum");
        assertThat(list.entries().subList(6, 9))
                .allMatch(entry -> entry.part() == IngredientList.Part.UP_TO_ONE_PERCENT);
    }

    /** 5 % of 60 % glyceryl stearate and 40 % PEG-100 stearate: 3 % and 2 %. */
    @Test
    void a_blend_with_known_shares_is_declared_by_its_components() {
        IngredientList list = IngredientList.of(new Kit()
                .line("A", "", "80", named("Aqua"))
                .line("A", "", "5", named("Glyceryl Stearate 60 % (and) PEG-100 Stearate 40 %"))
                .line("A", "", "15", named("Helianthus Annuus Seed Oil"))
                .recipe());

        assertThat(list.names())
                .containsExactly("Aqua", "Helianthus Annuus Seed Oil", "Glyceryl Stearate", "PEG-100 Stearate");
        assertThat(list.entries().get(2).level()).isEqualByComparingTo("0.03");
        assertThat(list.entries().get(3).level()).isEqualByComparingTo("0.02");
    }

    /** 5 % of which the first name has at most all and the second at most half; glycerin has 3 %. */
    @Test
    void a_blend_with_unknown_shares_is_placed_by_the_most_it_can_be_and_says_so() {
        IngredientList list = IngredientList.of(new Kit()
                .line("A", "", "92", named("Aqua"))
                .line("A", "", "3", named("Glycerin"))
                .line("A", "", "5", named("Undecane (and) Tridecane"))
                .recipe());

        assertThat(list.names()).containsExactly("Aqua", "Undecane", "Glycerin", "Tridecane");
        assertThat(list.entries().get(1).level()).isEqualByComparingTo("0.05");
        assertThat(list.entries().get(3).level()).isEqualByComparingTo("0.025");
        assertThat(list.entries()).extracting(IngredientList.Entry::atMost).containsExactly(false, true, false, true);
        assertThat(list.notes()).hasSize(1);
        assertThat(list.notes().get(0)).contains("shares in Undecane (and) Tridecane (material)", "are not known");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Phenoxyethanol (and) Ethylhexylglycerin | Phenoxyethanol, Ethylhexylglycerin",
                "Phenoxyethanol, Ethylhexylglycerin | Phenoxyethanol, Ethylhexylglycerin",
                "Phenoxyethanol (AND) Ethylhexylglycerin | Phenoxyethanol, Ethylhexylglycerin",
                "Phenoxyethanol; Ethylhexylglycerin | Phenoxyethanol, Ethylhexylglycerin",
                "1,2-Hexanediol, Caprylyl Glycol | 1,2-Hexanediol, Caprylyl Glycol",
                "Caprylic/Capric Triglyceride | Caprylic/Capric Triglyceride",
                "Helianthus Annuus (Sunflower, high oleic) Seed Oil | Helianthus Annuus (Sunflower, high oleic) Seed Oil",
                "Glyceryl Stearate (60%), PEG-100 Stearate (40%) | Glyceryl Stearate, PEG-100 Stearate",
                "60 % Glyceryl Stearate & 40 % PEG-100 Stearate | Glyceryl Stearate, PEG-100 Stearate"
            })
    void one_cell_is_split_into_its_names(String inci, String names) {
        IngredientList list =
                IngredientList.of(new Kit().line("A", "", "100", named(inci)).recipe());

        assertThat(list.text()).isEqualTo(names);
    }

    /** 10 % as supplied with 30 % active matter: 7 % is water, which joins the 80 %. */
    @Test
    void water_in_a_solution_is_what_is_not_active_matter() {
        Material solution = new Material(
                "Solution",
                "Sodium Lauroyl Sarcosinate, Water",
                List.of("cleansing"),
                null,
                null,
                Figure.ZERO,
                null,
                Traits.builder().figure(Fact.ACTIVE, Figure.of("0.3")).build(),
                Origin.NONE);
        IngredientList list = IngredientList.of(new Kit()
                .line("A", "", "80", named("Aqua"))
                .line("A", "", "10", solution)
                .line("A", "", "10", named("Glycerin"))
                .recipe());

        assertThat(list.names()).containsExactly("Aqua", "Glycerin", "Sodium Lauroyl Sarcosinate");
        assertThat(list.entries().get(0).level()).isEqualByComparingTo("0.87");
        assertThat(list.entries().get(2).level()).isEqualByComparingTo("0.03");
        assertThat(list.notes()).isEmpty();
    }

    private static Material scent(String name, String inci, String... allergensAndPercent) {
        List<Traits.Allergen> allergens = new ArrayList<>();
        for (int i = 0; i < allergensAndPercent.length; i += 2) {
            String percent = allergensAndPercent[i + 1];
            allergens.add(new Traits.Allergen(
                    allergensAndPercent[i],
                    percent.isEmpty() ? null : Figure.of(new BigDecimal(percent).movePointLeft(2))));
        }
        return new Material(
                name,
                inci,
                List.of("perfuming"),
                null,
                null,
                Figure.ZERO,
                null,
                Traits.builder().shares(Fact.ALLERGENS, allergens).build(),
                Origin.NONE);
    }

    /**
     * Leave-on: linalool 0.01 x 0.06 + 0.02 x 0.02 = 0.1 %; citral 0.01 x 0.0005 = 0.0005 %, below 0.001 %; geraniol
     * 0.01 x 0.0006 + 0.02 x 0.0003 = 0.0012 %, named though neither material alone reaches the threshold.
     */
    @Test
    void allergens_above_the_threshold_are_named_by_their_level_over_all_materials() {
        Kit kit = new Kit()
                .line("A", "", "97", named("Aqua"))
                .line("A", "", "1", scent("One", "Parfum", "Linalool", "6", "Citral", "0.05", "Geraniol", "0.06"))
                .line("A", "", "2", scent("Two", "Lavandula Angustifolia Oil", "Linalool", "2", "Geraniol", "0.03"));
        IngredientList leaveOn = IngredientList.of(kit.recipe());
        IngredientList rinseOff = IngredientList.of(kit.rinsedOff().recipe());

        assertThat(leaveOn.names())
                .containsExactly("Aqua", "Lavandula Angustifolia Oil", "Parfum", "Linalool", "Geraniol");
        assertThat(leaveOn.entries().get(3).level()).isEqualByComparingTo("0.001");
        assertThat(leaveOn.entries().get(4).level()).isEqualByComparingTo("0.000012");
        assertThat(leaveOn.entries().get(4).allergen()).isTrue();
        assertThat(rinseOff.names()).containsExactly("Aqua", "Lavandula Angustifolia Oil", "Parfum", "Linalool");
    }

    @Test
    void an_allergen_that_is_a_material_itself_stands_once_and_is_not_counted_twice() {
        IngredientList list = IngredientList.of(new Kit()
                .line("A", "", "98.5", named("Aqua"))
                .line("A", "", "0.5", scent("Benzyl alcohol", "Benzyl Alcohol", "Benzyl Alcohol", "100"))
                .line("A", "", "1", scent("One", "Parfum", "Benzyl Alcohol", "10"))
                .recipe());

        assertThat(list.names()).containsExactly("Aqua", "Parfum", "Benzyl Alcohol");
        assertThat(list.entries().get(2).level()).isEqualByComparingTo("0.006");
    }

    @Test
    void unknown_allergens_are_told() {
        IngredientList list = IngredientList.of(new Kit()
                .line("A", "", "98", named("Aqua"))
                .line("A", "", "1", scent("One", "Parfum", "Linalool", ""))
                .line("A", "", "1", scent("Two", "Aroma"))
                .recipe());

        assertThat(list.names()).containsExactly("Aqua", "Aroma", "Parfum");
        assertThat(list.notes())
                .anySatisfy(note -> assertThat(note).startsWith("It is not known how much there is of Linalool."))
                .anySatisfy(note -> assertThat(note).startsWith("No allergens are known of Two"));
    }

    @Test
    void what_moves_is_what_stands_before_others_than_now() {
        Kit now = new Kit()
                .line("A", "", "80", named("Aqua"))
                .line("A", "", "8", named("Glycerin"))
                .line("A", "", "6", named("Squalane"))
                .line("A", "", "6", named("Tocopherol"));
        Kit then = new Kit()
                .line("A", "", "80", named("Aqua"))
                .line("A", "", "9", named("Isopropyl Palmitate"))
                .line("A", "", "4", named("Glycerin"))
                .line("A", "", "7", named("Tocopherol"));
        LabelChange change = LabelChange.of(now.recipe(), then.recipe());

        assertThat(change.enters()).containsExactly("Isopropyl Palmitate");
        assertThat(change.leaves()).containsExactly("Squalane");
        assertThat(change.moves()).hasSize(1).isSubsetOf("Glycerin", "Tocopherol");
    }

    @Test
    void colourants_stand_last_however_much_there_is_of_them() {
        IngredientList list = IngredientList.of(new Kit()
                .line("A", "", "90", named("Aqua"))
                .line("A", "", "8", named("CI 77491", "cosmetic colorant"))
                .line("A", "", "2", named("Glycerin"))
                .recipe());

        assertThat(list.names()).containsExactly("Aqua", "Glycerin", "CI 77491");
    }

    @Test
    void one_substance_out_of_two_materials_stands_once() {
        IngredientList list = IngredientList.of(new Kit()
                .line("A", "", "96", named("Aqua"))
                .line("A", "", "2", named("Glycerin"))
                .line("B", "", "2", named("glycerin"))
                .recipe());

        assertThat(list.names()).containsExactly("Aqua", "Glycerin");
        assertThat(list.entries().get(1).level()).isEqualByComparingTo("0.04");
    }
}
