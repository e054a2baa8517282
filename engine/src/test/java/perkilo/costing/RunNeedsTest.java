package perkilo.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static perkilo.costing.Draft.batching;
import static perkilo.costing.Draft.component;
import static perkilo.costing.Draft.d;
import static perkilo.costing.Draft.line;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.units.Measure;

/** What a run needs of each item; all figures by hand. */
final class RunNeedsTest {

    /** 100 kg with glycerin at 3 % and 2 % in two phases, and 5 % of what is weighed sticking to the scoop. */
    @Test
    void a_material_in_several_phases_is_needed_once_with_its_handling_loss() {
        Draft draft = new Draft()
                .material(Draft.material("Glycerin", "Glycerin", null, null, "0.05", null))
                .formula("Gel", Batching.ANY, line("Glycerin", "0.03"), line("Water", null), line("GLYCERIN ", "0.02"))
                .bulk("Gel", "100");

        RunNeeds needs = needs(draft);

        assertThat(needs.items()).extracting(Item::name).containsExactly("Glycerin", "Water");
        assertThat(needs.items().get(0).share()).isEqualByComparingTo("0.05");
        assertThat(needs.items().get(0).needed()).isEqualByComparingTo("5.25");
        assertThat(needs.items().get(0).lines()).hasSize(2);
        assertThat(needs.items().get(1).needed()).isEqualByComparingTo("95");
    }

    /** 50 kg filled of 56 kg weighed in (three batches that each leave 2 kg): needs follow what is weighed in. */
    @Test
    void needs_follow_what_is_weighed_in() {
        Draft draft = new Draft().formula("Gel", batching("22", "0", "2"), line("Oil", "0.25"), line("Water", null));
        draft.products.add(Draft.product("Jar", "Gel", "50", Measure.G));
        draft.run("Jar", "1000");

        RunNeeds needs = needs(draft);

        assertThat(needs.items().get(0).needed()).isEqualByComparingTo("14");
        assertThat(needs.items().get(1).needed()).isEqualByComparingTo("42");
        assertThat(needs.title()).isEqualTo("1,000 × Jar");
    }

    /** 1,000 × 2 × 1.02 = 2,040 exactly; 333 × 1.03 = 342.99; 100 × 1 × 1.07 = 107, where binary fractions give 108. */
    @ParameterizedTest(name = "{0} units, {1} each, {2} lost: {3}")
    @CsvSource({"1000, 2, 0.02, 2040", "333, 1, 0.03, 343", "100, 1, 0.07, 107", "7, 0.5, 0, 4", "8, 0.125, 0, 1"})
    void components_are_whole_pieces(String units, String perUnit, String loss, BigDecimal pieces) {
        Draft draft = new Draft().formula("Gel", Batching.ANY, line("Water", null));
        draft.products.add(Draft.product("Jar", "Gel", "50", Measure.G, component("Lid", perUnit, loss)));
        draft.run("Jar", units);

        Item lid = needs(draft).items().get(1);

        assertThat(lid.needed()).isEqualByComparingTo(pieces);
        assertThat(lid.isMaterial()).isFalse();
        assertThat(lid.unit()).isEqualTo("each");
    }

    @Test
    void bulk_needs_no_packaging() {
        Draft draft = new Draft().formula("Gel", Batching.ANY, line("Oil", "0.25"), line("Water", null));
        draft.products.add(Draft.product("Jar", "Gel", "50", Measure.G, component("Lid", "1", "0")));
        draft.bulk("Gel", "25");

        RunNeeds needs = needs(draft);

        assertThat(needs.items()).extracting(Item::name).containsExactly("Oil", "Water");
        assertThat(needs.items().get(0).needed()).isEqualByComparingTo(d("6.25"));
        assertThat(needs.title()).isEqualTo("25 kg of Gel");
        assertThat(needs.units()).isNull();
    }

    @Test
    void a_run_of_something_that_the_book_lacks_is_an_error() {
        assertThatThrownBy(() -> needs(new Draft().run("Jar", "1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no product Jar");
        assertThatThrownBy(() -> needs(new Draft().bulk("Gel", "1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no formula Gel");
    }

    private static RunNeeds needs(Draft draft) {
        Book book = draft.book();
        return RunNeeds.of(book, book.runs().get(0));
    }
}
