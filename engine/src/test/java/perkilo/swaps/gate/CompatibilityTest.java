package perkilo.swaps.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Material;
import perkilo.swaps.Kit;

/** What goes together and what does not, with its levels and pH. */
final class CompatibilityTest {

    private static Material material(String name) {
        return name.endsWith("*") ? Material.of(name.substring(0, name.length() - 1)) : Kit.catalogued(name);
    }

    private static List<Compatibility.Conflict> conflicts(
            String ph, String one, String oneLevel, String other, String level) {
        return Compatibility.conflicts(new Kit()
                .line("A", "25", "q.s.", Kit.catalogued("Water"))
                .line("A", "25", oneLevel, material(one))
                .line("A", "25", level, material(other))
                .ph(ph)
                .recipe());
    }

    private static String worst(List<Compatibility.Conflict> conflicts) {
        return conflicts.stream().anyMatch(Compatibility.Conflict::isShut)
                ? "shut"
                : conflicts.isEmpty() ? "open" : "caution";
    }

    /** Common practice, as the table says; levels on both sides of each bound. */
    @ParameterizedTest(name = "{0} {1} % with {2} {3} %, pH {4}: {5}")
    @CsvSource({
        "Behentrimonium chloride 80 %, 2, Sodium laureth sulfate 70 %, 10, 5, shut",
        "Cetrimonium chloride solution, 2, Potassium cetyl phosphate, 2, 5, shut",
        "Behentrimonium methosulfate, 2, Carbomer, 0.3, 6, shut",
        "Behentrimonium methosulfate, 2, Xanthan gum, 0.3, 5, shut",
        "Behentrimonium methosulfate, 2, Hydroxyethylcellulose, 0.5, 5, open",
        "Behentrimonium methosulfate, 2, Cocamidopropyl betaine 30 %, 5, 5, open",
        "Polyquaternium-10, 0.3, Sodium laureth sulfate 70 %, 10, 5, caution",
        "Polyquaternium-10, 0.3, Carbomer, 0.3, 6, shut",
        "Polyquaternium-7 solution, 3, Xanthan gum, 0.3, 5, caution",
        "Chlorhexidine digluconate 20 %, 1, Sodium lauryl sulfate, 2, 6, shut",
        "Carbomer, 0.3, Sodium chloride, 2, 6, shut",
        "Carbomer, 0.3, Sodium chloride, 0.5, 6, caution",
        "Carbomer, 0.3, Sodium chloride, 0.1, 6, open",
        "Polyacrylate crosspolymer-6, 0.5, Sodium chloride, 2, 6, open",
        "Hydroxyethylcellulose, 0.5, Sodium chloride, 2, 6, open",
        "Carbomer, 0.3, Zinc oxide, 5, 7, caution",
        "Algin, 0.5, Calcium Chloride*, 0.2, 6, shut",
        "Algin, 0.5, Sodium chloride, 0.2, 6, open",
        "DMDM hydantoin 55 %, 0.4, Sodium metabisulfite, 0.1, 6, shut",
        "Bronopol*, 0.05, Triethanolamine, 0.5, 7, shut",
        "Dihydroxyacetone*, 3, Arginine, 0.5, 5, shut",
        "Phenoxyethanol, 0.9, Polysorbate 80, 5, 5, caution",
        "Phenoxyethanol, 0.9, Polysorbate 80, 1, 5, open",
        "Alcohol denat., 60, Xanthan gum, 0.3, 6, shut",
        "Alcohol denat., 30, Xanthan gum, 0.3, 6, caution",
        "Alcohol denat., 10, Xanthan gum, 0.3, 6, open",
        "Ascorbic Acid*, 5, Glycerin, 3, 5, caution",
        "Ascorbic Acid*, 5, Glycerin, 3, 3.2, open",
        "Sodium Benzoate*, 0.5, Glycerin, 3, 6, shut",
        "Sodium Benzoate*, 0.5, Glycerin, 3, 5, open"
    })
    void pairs(String one, String oneLevel, String other, String level, String ph, String expected) {
        assertThat(worst(conflicts(ph, one, oneLevel, other, level))).isEqualTo(expected);
        assertThat(worst(conflicts(ph, other, level, one, oneLevel)))
                .as("the order of lines does not matter")
                .isEqualTo(expected);
    }

    @Test
    void a_sentence_names_both() {
        assertThat(conflicts("5", "Behentrimonium chloride 80 %", "2", "Sodium laureth sulfate 70 %", "10"))
                .extracting(Compatibility.Conflict::words)
                .containsExactly(
                        "Behentrimonium chloride 80 % is cationic and Sodium laureth sulfate 70 % is an anionic"
                                + " surfactant: together they form an insoluble salt, and both lose their effect.");
    }

    @Test
    void each_class_of_the_table_is_defined() {
        assertThat(MaterialClass.names()).containsAll(Compatibility.classes());
    }

    @Test
    void classes_go_by_role_charge_and_name() {
        assertThat(MaterialClass.of(Kit.catalogued("Sodium lactate 60 %"))).isEqualTo(Set.of("electrolyte"));
        assertThat(MaterialClass.of(Kit.catalogued("Glycerin"))).isEmpty();
        assertThat(MaterialClass.of(Kit.catalogued("Cocamidopropyl betaine 30 %")))
                .isEmpty();
        assertThat(MaterialClass.of(Kit.catalogued("Glyceryl stearate citrate")))
                .contains("anionic emulsifier")
                .doesNotContain("anionic surfactant");
    }
}
