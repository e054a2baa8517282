package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.schema.MaterialsSheet;

/**
 * The facts that are typed for a material are the facts that are read.
 *
 * <p>A new fact is tested here without a change of this test: each is typed as its own example shows it.
 */
final class FactsTest {

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest(name = "{0}")
    @EnumSource(Fact.class)
    void a_fact_that_a_workbook_states_is_known(Fact fact) {
        Material shea = shea(TestBook.sound()
                .sheet("Materials", List.of("Material", fact.header()), List.of("Shea butter", fact.example())));

        assertThat(value(shea.traits(), fact))
                .as("%s, typed as %s under \"%s\"", fact, fact.example(), fact.header())
                .isEqualTo(typed(fact));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Fact.class)
    void a_fact_may_have_any_of_its_headers(Fact fact) {
        for (String header : fact.alsoHeaded()) {
            Material shea = shea(TestBook.sound()
                    .sheet("Materials", List.of("Material", header), List.of("Shea butter", fact.example())));

            assertThat(value(shea.traits(), fact))
                    .as("%s under \"%s\"", fact, header)
                    .isEqualTo(typed(fact));
        }
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Fact.class)
    void a_blank_is_not_known(Fact fact) {
        Material shea = shea(
                TestBook.sound().sheet("Materials", List.of("Material", fact.header()), List.of("Shea butter", "")));

        assertThat(shea.traits().isAnyKnown())
                .as("whether a blank %s is a fact", fact)
                .isFalse();
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Fact.class)
    void a_file_of_materials_may_state_it(Fact fact) throws IOException {
        Path prices = Files.createDirectory(folder.resolve("prices"));
        Files.writeString(
                prices.resolve("materials.csv"),
                "Material,%s\nShea butter,%s\n".formatted(fact.header(), fact.example()));

        var read = new BookReader()
                .read(
                        new Sources(TestBook.sound().drop("Materials").save(), List.of(prices), null, null),
                        TestBook.TODAY);

        assertThat(value(read.value().material("Shea butter").orElseThrow().traits(), fact))
                .as("%s from a file of materials", fact)
                .isEqualTo(typed(fact));
    }

    @Test
    void the_sheet_has_a_column_for_each_fact_after_what_every_run_needs() {
        assertThat(MaterialsSheet.SCHEMA.columns())
                .extracting(column -> column.header())
                .endsWith(Arrays.stream(Fact.values()).map(Fact::header).toArray(String[]::new))
                .startsWith("Material", "INCI name", "Functions", "Density g/mL");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Carbon footprint",
                "Carbon footprint, kg CO2e per kg",
                "Carbon footprint (kg CO2e/kg)",
                "Carbon footprint kg CO₂e/kg",
                "carbon footprint [kg CO2 eq/kg]"
            })
    void a_carbon_footprint_is_in_kilograms_for_a_kilogram(String header) {
        assertThat(footprint(header, 2.4).value()).isEqualByComparingTo("2.4");
    }

    @Test
    void a_carbon_footprint_in_grams_for_a_kilogram_is_converted() {
        assertThat(footprint("Carbon footprint (g CO2e/kg)", 2400).value()).isEqualByComparingTo("2.4");
    }

    /** Zero is a known figure; a blank is not. */
    @ParameterizedTest
    @CsvSource({"0, ''", "-0.5, 'error Materials!B2: Carbon footprint kg CO2e/kg is -0.5. It must be zero or more.'"})
    void a_carbon_footprint_is_zero_or_more(double typed, String message) {
        var read = TestBook.sound()
                .sheet("Materials", List.of("Material", "Carbon footprint"), List.of("Shea butter", typed))
                .read();

        assertThat(read.findings().stream()
                        .map(Object::toString)
                        .filter(text -> text.contains("Carbon"))
                        .toList())
                .isEqualTo(message.isEmpty() ? List.of() : List.of(message));
    }

    private static Figure footprint(String header, double typed) {
        Material shea =
                shea(TestBook.sound().sheet("Materials", List.of("Material", header), List.of("Shea butter", typed)));
        Figure footprint = shea.traits().figure(Fact.CARBON_FOOTPRINT);
        assertThat(footprint).as("a footprint under \"%s\"", header).isNotNull();
        return Objects.requireNonNull(footprint);
    }

    private static Material shea(TestBook book) {
        return book.read().value().material("Shea butter").orElseThrow();
    }

    private static Object value(Traits traits, Fact fact) {
        return switch (fact.kind()) {
            case NUMBER, PERCENT -> {
                Figure figure = traits.figure(fact);
                yield figure == null ? "not known" : figure.value().stripTrailingZeros();
            }
            case WORD -> traits.word(fact);
            case WORDS -> traits.words(fact);
            case SHARES -> {
                List<String> shares = new ArrayList<>();
                for (Traits.Allergen one : traits.shares(fact)) {
                    Figure share = one.share();
                    shares.add(one.name()
                            + (share == null ? "" : " " + share.value().movePointRight(2)));
                }
                yield shares;
            }
        };
    }

    private static Object typed(Fact fact) {
        String example = fact.example();
        return switch (fact.kind()) {
            case NUMBER -> new BigDecimal(example).stripTrailingZeros();
            case PERCENT -> new BigDecimal(example).movePointLeft(2).stripTrailingZeros();
            case WORD -> example;
            case WORDS, SHARES -> List.of(example.split("; ", -1));
        };
    }
}
