package perkilo.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/** A recipe in per cent by weight, and the names in it. */
final class FormulaTest {

    /** 100 % less 12.5 % and 3.25 %. */
    @Test
    void the_balance_is_what_the_others_leave() {
        Formula formula = formula(line("Water", null), line("Oil", "0.125"), line("Wax", "0.0325"));

        assertThat(formula.stated()).isEqualByComparingTo("0.1575");
        assertThat(formula.hasBalanceLine()).isTrue();
        assertThat(formula.levelOf(formula.lines().get(0))).isEqualByComparingTo("0.8425");
        assertThat(formula.levelOf(formula.lines().get(1))).isEqualByComparingTo("0.125");
    }

    @Test
    void without_a_balance_line_levels_stay_as_they_are() {
        Formula formula = formula(line("Oil", "0.7"), line("Wax", "0.29998"));

        assertThat(formula.hasBalanceLine()).isFalse();
        assertThat(formula.stated()).isEqualByComparingTo("0.99998");
        assertThat(formula.levelOf(formula.lines().get(1))).isEqualByComparingTo("0.29998");
    }

    @ParameterizedTest(name = "\"{0}\" and \"{1}\"")
    @CsvSource({
        "Jojoba Oil, jojoba  oil",
        "' Jojoba oil', Jojoba oil",
        "Jojoba\u00a0oil, jojoba oil",
        "ＪＯＪＯＢＡ oil, jojoba oil",
        "STÜCK, stück"
    })
    void spellings_of_one_name_have_one_key(String one, String other) {
        assertThat(Names.key(one)).isEqualTo(Names.key(other));
    }

    @Test
    void other_names_have_other_keys() {
        assertThat(Names.key("Jojoba oil")).isNotEqualTo(Names.key("Jojoba ester"));
        assertThat(Names.key("CO 40")).isNotEqualTo(Names.key("CO40"));
    }

    /** Aqua is water's INCI name; in the trade it is written alone or beside Water. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Aqua",
                "AQUA",
                "Aqua (Water)",
                "Water (Aqua)",
                "Water/Aqua",
                "aqua/water",
                "Aqua/Water/Eau",
                "Water"
            })
    void process_water_is_known_by_its_ingredient_name(String inci) {
        assertThat(named("Demineralised", inci).isWater()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"Aqua, ''", "Water, ''", "water, ''", "Wasser, ''", "Eau, ''", "acqua, ''", "Agua, ''"})
    void process_water_is_known_by_its_own_name_where_no_other_is_given(String name, String inci) {
        assertThat(named(name, inci).isWater()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "Rose water, Rosa Damascena Flower Water",
        "Rose water, ''",
        "Aqua, Rosa Damascena Flower Water",
        "Aquasoft, ''",
        "Waterlily, ''",
        "Rosenwasser, ''",
        "Agua, Rosa Damascena Flower Water"
    })
    void what_only_sounds_like_water_is_not(String name, String inci) {
        assertThat(named(name, inci).isWater()).isFalse();
    }

    private static Material named(String name, String inci) {
        return new Material(name, inci, List.of(), null, null, Figure.ZERO, null, Traits.UNKNOWN, Origin.NONE);
    }

    private static Formula formula(Formula.Line... lines) {
        return new Formula("test", List.of(lines), Batching.ANY, Origin.NONE);
    }

    private static Formula.Line line(String material, @Nullable String level) {
        return new Formula.Line("A", material, level == null ? null : Figure.of(level), null, Origin.NONE);
    }
}
