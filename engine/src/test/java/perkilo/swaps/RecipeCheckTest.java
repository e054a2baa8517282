package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.ProductFixture;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Level;

/** Warnings about what a formula itself does not keep, in the demo with one thing changed. */
final class RecipeCheckTest {

    private static final Book DEMO = Kit.demo();
    private static final Formula CREAM = DEMO.formula("Face cream").orElseThrow();

    @Test
    void the_demo_keeps_everything() {
        assertThat(warnings(DEMO)).isEmpty();
    }

    @Test
    void a_level_above_the_legal_maximum_is_reported_once_at_its_line() {
        List<Finding> findings = warnings(with("Phenoxyethanol", "legalMax", Figure.of("0.005")));

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).level()).isEqualTo(Level.WARNING);
        assertThat(findings.get(0).origin()).isEqualTo(line("Phenoxyethanol").origin());
        assertThat(findings.get(0).text())
                .contains("Check \"Phenoxyethanol\" in Face cream (legal maximum). ", "but the legal maximum is 0.5 %")
                .endsWith("Local rules and a qualified safety assessor decide.");
    }

    @Test
    void a_level_at_its_bound_is_kept() {
        BigDecimal level = CREAM.levelOf(line("Cetearyl isononanoate"));

        assertThat(warnings(with("Cetearyl isononanoate", "useMax", Figure.of(level))))
                .isEmpty();
        assertThat(texts(with("Cetearyl isononanoate", "useMax", Figure.of(level.subtract(new BigDecimal("0.0001"))))))
                .singleElement()
                .asString()
                .startsWith("Check \"Cetearyl isononanoate\" in Face cream (use range). ");
    }

    @Test
    void heat_and_ph_are_looked_at_too() {
        assertThat(texts(with("Cetearyl isononanoate", "maxProcessC", Figure.of("40"))))
                .singleElement()
                .asString()
                .startsWith("Check \"Cetearyl isononanoate\" in Face cream (heat). Withstands only 40 °C");
        assertThat(texts(with("Phenoxyethanol", "phMax", Figure.of("3"))))
                .singleElement()
                .asString()
                .startsWith("Check \"Phenoxyethanol\" in Face cream (pH). ");
    }

    @Test
    void a_tag_that_is_not_stated_is_missing() {
        List<String> required = DEMO.products().values().stream()
                .filter(product -> product.formula().equals(CREAM.name()))
                .findFirst()
                .orElseThrow()
                .requiredTags();
        assertThat(required).as("the demo asks for a tag").isNotEmpty();

        assertThat(texts(with("Phenoxyethanol", "tags", List.of())))
                .containsExactly("Check the tags of Face cream. Its products require " + String.join(", ", required)
                        + ", but these materials are not known to be so: Phenoxyethanol.");
    }

    @Test
    void a_natural_origin_target_has_to_be_shown() {
        Map<String, Product> products = new LinkedHashMap<>(DEMO.products());
        products.replaceAll((key, product) -> product.formula().equals(CREAM.name())
                ? ProductFixture.like(product)
                        .claims(new Product.Claims(product.requiredTags(), Figure.of("0.999")))
                        .product()
                : product);

        assertThat(texts(Varied.of(DEMO, "products", products)))
                .singleElement()
                .asString()
                .startsWith("The natural origin content of Face cream is ")
                .contains(", but the target is 99.9 %.");
    }

    @Test
    void of_materials_that_are_names_and_no_more_nothing_is_said() {
        assertThat(RecipeCheck.of(Varied.of(DEMO, "materials", Map.of()))).isEmpty();
    }

    private static Formula.Line line(String material) {
        return CREAM.lines().stream()
                .filter(line -> line.material().equals(material))
                .findFirst()
                .orElseThrow();
    }

    private static Book with(String material, String trait, @Nullable Object value) {
        return with(DEMO, material, trait, value);
    }

    private static Book with(Book book, String material, String trait, @Nullable Object value) {
        Map<String, Material> materials = new LinkedHashMap<>(book.materials());
        materials.replaceAll((key, one) -> one.name().equals(material) ? Varied.trait(one, trait, value) : one);
        return Varied.of(book, "materials", materials);
    }

    private static List<String> texts(Book book) {
        return warnings(book).stream().map(Finding::text).toList();
    }

    /** Without notes, such as on allergens that the label has to name. */
    private static List<Finding> warnings(Book book) {
        return RecipeCheck.of(book).stream()
                .filter(finding -> finding.level() == Level.WARNING)
                .toList();
    }
}
