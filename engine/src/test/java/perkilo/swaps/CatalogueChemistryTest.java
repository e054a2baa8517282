package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the catalogue says about acids, bases, chelators and about roles agrees with the textbooks. */
final class CatalogueChemistryTest {

    private static final List<Map<String, String>> ROWS = Csv.read("prices/materials.csv");

    /** IUPAC abridged standard atomic weights (2021). */
    private static final Map<String, Double> ATOMIC_WEIGHT =
            Map.of("H", 1.008, "C", 12.011, "N", 14.007, "O", 15.999, "Na", 22.990, "P", 30.974, "K", 39.098);

    private static final Pattern ELEMENT = Pattern.compile("([A-Z][a-z]?)(\\d*)");

    /** The formula of the active matter, without water of crystallisation, and how many equivalents it counts for. */
    @ParameterizedTest(name = "{0}: {1} counts for {2}")
    @CsvSource({
        "Citric acid, C6H8O7, 3",
        "Malic acid, C4H6O5, 2",
        "Tartaric acid, C4H6O6, 2",
        "Lactic acid 80 %, C3H6O3, 1",
        "Glycolic acid 70 %, C2H4O3, 1",
        "Gluconolactone, C6H10O6, 1",
        "Phosphoric acid 85 %, H3PO4, 1",
        "Sodium hydroxide 10 % solution, NaOH, 1",
        "Sodium hydroxide pellets, NaOH, 1",
        "Potassium hydroxide 10 % solution, KOH, 1",
        "Triethanolamine, C6H15NO3, 1",
        "Tromethamine, C4H11NO3, 1",
        "Arginine, C6H14N4O2, 1",
        "Aminomethyl propanol 95 %, C4H11NO, 1",
        "Sodium carbonate, Na2CO3, 2",
        "Sodium citrate, C6H5Na3O7, 3",
        "Sodium lactate 60 %, C3H5NaO3, 1",
        "Disodium phosphate, Na2HPO4, 1",
        "Potassium citrate, C6H5K3O7, 3",
        "Disodium EDTA, C10H14N2Na2O8, 1",
        "Tetrasodium EDTA, C10H12N2Na4O8, 1",
        "Tetrasodium glutamate diacetate solution, C9H9NNa4O8, 1",
        "Trisodium ethylenediamine disuccinate solution, C10H13N2Na3O8, 1",
        "Sodium gluconate, C6H11NaO7, 1",
        "Tetrasodium etidronate, C2H4Na4O7P2, 1",
        "Sodium phytate solution, C6H6Na12O24P6, 3",
        "Phytic acid 50 %, C6H18O24P6, 3"
    })
    void equivalent_weights_follow_from_atomic_weights(String material, String formula, int equivalents) {
        Map<String, String> row = row(material);

        assertThat(Double.parseDouble(row.getOrDefault("Equivalent weight g/mol", "")))
                .isCloseTo(molarMass(formula) / equivalents, within(0.02));
        String groups = row.getOrDefault("Acid or base groups", "");
        assertThat(groups.isEmpty() || groups.equals(String.valueOf(equivalents)))
                .isTrue();
    }

    @Test
    void every_equivalent_weight_is_that_of_an_acid_a_base_a_buffer_salt_or_a_chelator() {
        assertThat(ROWS)
                .filteredOn(
                        row -> !row.getOrDefault("Equivalent weight g/mol", "").isEmpty())
                .hasSize(27)
                .allSatisfy(row -> assertThat(roles(row))
                        .as(row.get("Material"))
                        .containsAnyOf("acid", "base", "buffer salt", "chelator"));
    }

    /** Exchanges that nobody would sign, though the materials share a function of the glossary. */
    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({
        "Tromethamine, Citric acid",
        "Sodium hydroxide 10 % solution, Lactic acid 80 %",
        "Sodium citrate, Citric acid",
        "Sodium citrate, Sodium bicarbonate",
        "Xanthan gum, Acacia gum",
        "Hydroxyethylcellulose, Sodium chloride",
        "Xanthan gum, Benzyl alcohol",
        "Xanthan gum, Sodium chloride",
        "Carbomer, Xanthan gum",
        "Salicylic acid, Glycerin",
        "Niacinamide, Glycerin",
        "Sodium laureth sulfate 70 %, Cocamidopropyl betaine 30 %",
        "Sodium laureth sulfate 70 %, Cetrimonium chloride solution",
        "Polysorbate 20, Polyglyceryl-3 diisostearate",
        "Ceteareth-20, PEG-30 dipolyhydroxystearate",
        "Polyquaternium-10, Hydroxyethylcellulose",
        "Bentonite, Kaolin",
        "Pumice, Talc",
        "Titanium dioxide, Octocrylene",
        "Disodium EDTA, Citric acid",
        "Sodium metabisulfite, Sodium benzoate"
    })
    void absurd_exchanges_share_no_role(String one, String other) {
        Set<String> shared = new HashSet<>(roles(row(one)));
        shared.retainAll(roles(row(other)));

        assertThat(roles(row(one))).isNotEmpty();
        assertThat(roles(row(other))).isNotEmpty();
        assertThat(shared).isEmpty();
    }

    /** What carries the claim comes first, so that it is kept. */
    @ParameterizedTest
    @CsvSource({
        "Niacinamide",
        "Panthenol 75 %",
        "Allantoin",
        "Caffeine",
        "Sodium hyaluronate",
        "Zinc PCA",
        "Glycolic acid 70 %",
        "Salicylic acid",
        "Urea",
        "Ascorbic acid",
        "Piroctone olamine"
    })
    void actives_are_actives_first(String material) {
        assertThat(roles(row(material))).first().isEqualTo("water-soluble active");
    }

    private static double molarMass(String formula) {
        Matcher element = ELEMENT.matcher(formula);
        double mass = 0;
        int read = 0;
        while (element.find()) {
            int count = element.group(2).isEmpty() ? 1 : Integer.parseInt(element.group(2));
            mass += count * ATOMIC_WEIGHT.getOrDefault(element.group(1), Double.NaN);
            read += element.end() - element.start();
        }
        assertThat(read).as(formula).isEqualTo(formula.length());
        return mass;
    }

    private static List<String> roles(Map<String, String> row) {
        return Arrays.asList(row.getOrDefault("Role", "").split("\\s*;\\s*", -1));
    }

    private static Map<String, String> row(String material) {
        return ROWS.stream()
                .filter(row -> material.equals(row.get("Material")))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + material));
    }
}
