package perkilo.swaps.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import perkilo.model.Traits;
import perkilo.origin.Figure;

/**
 * Which fragrance allergens a label names: those above 0.001 % leave-on, above 0.01 % rinse-off.
 *
 * <p>Regulation (EU) 2023/1545. A fragrance at 0.3 % with 5 % linalool, 0.3 % geraniol, 0.4 % citral.
 */
final class AllergensTest {

    private static Allergens inProduct() {
        Allergens allergens = new Allergens();
        allergens.add(
                new BigDecimal("0.003"),
                List.of(
                        new Traits.Allergen("Linalool", Figure.of("0.05")),
                        new Traits.Allergen("Geraniol", Figure.of("0.003")),
                        new Traits.Allergen("Citral", Figure.of("0.004"))));
        return allergens;
    }

    @Test
    void leave_on() {
        assertThat(inProduct().toBeNamed(false)).containsExactly("Citral", "Linalool");
    }

    @Test
    void rinse_off() {
        assertThat(inProduct().toBeNamed(true)).containsExactly("Linalool");
    }

    @Test
    void exactly_at_the_threshold_none_is_named() {
        Allergens allergens = new Allergens();
        allergens.add(BigDecimal.ONE, List.of(new Traits.Allergen("Limonene", Figure.of("0.00001"))));

        assertThat(allergens.toBeNamed(false)).isEmpty();
    }

    @Test
    void shares_of_several_materials_add_up() {
        Allergens allergens = inProduct();
        allergens.add(new BigDecimal("0.001"), List.of(new Traits.Allergen("geraniol", Figure.of("0.01"))));

        // 0.3 % × 0.3 % + 0.1 % × 1 % = 0.0019 %
        assertThat(allergens.shareOf("Geraniol")).isEqualByComparingTo("0.000019");
        assertThat(allergens.toBeNamed(false)).contains("Geraniol");
    }
}
