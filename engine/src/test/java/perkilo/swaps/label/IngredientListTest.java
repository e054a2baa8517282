package perkilo.swaps.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
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

    @Test
    void a_blend_with_unknown_shares_stays_together_and_says_so() {
        IngredientList list = IngredientList.of(new Kit()
                .line("A", "", "95", named("Aqua"))
                .line("A", "", "5", named("Undecane (and) Tridecane"))
                .recipe());

        assertThat(list.names()).containsExactly("Aqua", "Undecane (and) Tridecane");
        assertThat(list.notes()).hasSize(1);
        assertThat(list.notes().get(0)).contains("shares of Undecane (and) Tridecane are not known");
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
