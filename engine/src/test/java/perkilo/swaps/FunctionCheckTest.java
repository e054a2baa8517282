package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.origin.Finding;
import perkilo.swaps.facts.Functions;

/** Words for functions: terms of the glossary, words of the trade, and misspellings. */
final class FunctionCheckTest {

    private static final Book DEMO = Kit.demo();

    @Test
    void every_word_that_comes_along_is_known() {
        assertThat(FunctionCheck.of(DEMO)).isEmpty();
        assertThat(FunctionCheck.of(Varied.of(DEMO, "materials", Book.byName(Kit.catalogue(), Material::name))))
                .isEmpty();
    }

    @Test
    void a_misspelling_is_reported_with_the_likely_term() {
        assertThat(findings("emolient"))
                .containsExactly(
                        "warning: \"emolient\" (function of \"Isopropyl palmitate\") is not a term of the EU glossary."
                                + " Did you mean \"emollient\"?");
    }

    @Test
    void a_word_of_ones_own_is_noted() {
        assertThat(findings("velvet touch"))
                .containsExactly("note: \"velvet touch\" (function of \"Isopropyl palmitate\") is not a term of the EU"
                        + " glossary.");
    }

    @Test
    void a_word_of_many_materials_is_reported_once() {
        Map<String, Material> materials = new LinkedHashMap<>();
        for (String name : List.of("A", "B", "C", "D", "E", "F")) {
            Material named = Varied.of(Kit.catalogued("Isopropyl palmitate"), "name", name);
            materials.put(
                    name, Varied.of(named, "functions", List.of(name.equals("B") ? "Velvet Touch" : "velvet touch")));
        }

        assertThat(FunctionCheck.of(Varied.of(DEMO, "materials", materials)))
                .extracting(Finding::text)
                .containsExactly("\"velvet touch\" (function of \"A\", \"B\", \"C\", \"D\" and 2 more) is not a term of"
                        + " the EU glossary.");
    }

    @ParameterizedTest
    @CsvSource({
        "Emulsifier, emulsifying",
        "SURFACTANT - EMULSIFYING, emulsifying",
        "Emollients, emollient",
        "skin conditioning - emollient, emollient",
        "Thickener, viscosity controlling"
    })
    void words_of_the_trade_are_those_of_the_glossary(String word, String meant) {
        Material material = Varied.of(Kit.catalogued("Isopropyl palmitate"), "functions", List.of(word));

        assertThat(findings(word)).isEmpty();
        assertThat(Functions.work(material)).isEqualTo(meant);
        assertThat(Functions.does(material, word)).isTrue();
    }

    private static List<String> findings(String function) {
        Map<String, Material> materials = new LinkedHashMap<>(DEMO.materials());
        materials.replaceAll((key, material) -> material.name().equals("Isopropyl palmitate")
                ? Varied.of(material, "functions", List.of(function))
                : material);
        List<Finding> findings = FunctionCheck.of(Varied.of(DEMO, "materials", materials));
        return findings.stream()
                .map(finding -> finding.level().name().toLowerCase(java.util.Locale.ROOT) + ": " + finding.text())
                .toList();
    }
}
