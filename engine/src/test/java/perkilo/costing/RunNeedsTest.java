package perkilo.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static perkilo.costing.Draft.batching;
import static perkilo.costing.Draft.component;
import static perkilo.costing.Draft.d;
import static perkilo.costing.Draft.line;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.units.Measure;

/** What a run needs of each item; all figures by hand. */
final class RunNeedsTest {

    /**
     * 100 kg with glycerin at 3 % and 2 % in two phases, and 5 % of what is weighed sticking to the scoop: 5 / 0.95 kg
     * are weighed, of which 5 kg get into the kettle.
     */
    @Test
    void a_material_in_several_phases_is_needed_once_with_its_handling_loss() {
        Draft draft = new Draft()
                .material(Draft.material("Glycerin", "Glycerin", null, null, "0.05", null))
                .formula("Gel", Batching.ANY, line("Glycerin", "0.03"), line("Water", null), line("GLYCERIN ", "0.02"))
                .bulk("Gel", "100");

        RunNeeds needs = needs(draft);

        assertThat(needs.items()).extracting(Item::name).containsExactly("Glycerin", "Water");
        assertThat(needs.items().get(0).share()).isEqualByComparingTo("0.05");
        assertThat(needs.items().get(0).needed().setScale(9, RoundingMode.HALF_UP))
                .isEqualTo("5.263157895");
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

    /**
     * 1,000 / 0.9 = 1,111.1; 1,000 × 2 / 0.98 = 2,040.8; 333 / 0.97 = 343.3; 93 / 0.93 = 100 and 57 × 0.1 / 0.95 = 6
     * exactly, where binary fractions give 101 and 7.
     */
    @ParameterizedTest(name = "{0} units, {1} each, {2} lost: {3}")
    @CsvSource({
        "1000, 1, 0.1, 1112",
        "1000, 2, 0.02, 2041",
        "333, 1, 0.03, 344",
        "93, 1, 0.07, 100",
        "57, 0.1, 0.05, 6",
        "7, 0.5, 0, 4",
        "8, 0.125, 0, 1"
    })
    void components_are_whole_pieces(String units, String perUnit, String loss, BigDecimal pieces) {
        Draft draft = new Draft().formula("Gel", Batching.ANY, line("Water", null));
        draft.products.add(Draft.product("Jar", "Gel", "50", Measure.G, component("Lid", perUnit, loss)));
        draft.run("Jar", units);

        Item lid = needs(draft).items().get(1);

        assertThat(lid.needed()).isEqualByComparingTo(pieces);
        assertThat(lid.isMaterial()).isFalse();
        assertThat(lid.unit()).isEqualTo("each");
    }

    /**
     * The definition of a loss, checked forwards: of what is put in, the loss is taken away, and what comes out is
     * enough; one piece less would not be.
     */
    @Property
    void what_comes_out_of_a_loss_is_what_was_needed(
            @ForAll @IntRange(min = 1, max = 5000) int units, @ForAll @IntRange(max = 99) int percent) {
        String loss = new BigDecimal(percent).movePointLeft(2).toPlainString();
        Draft draft = new Draft()
                .material(Draft.material("Oil", "Oil", null, null, loss, null))
                .formula("Gel", Batching.ANY, line("Oil", "1"));
        draft.products.add(Draft.product("Jar", "Gel", "1000", Measure.G, component("Lid", "1", loss)));
        draft.run("Jar", String.valueOf(units));

        List<Item> items = needs(draft).items();

        int kept = 100 - percent;
        long lids = items.get(1).needed().longValueExact();
        assertThat(lids * kept).isGreaterThanOrEqualTo(100L * units);
        assertThat((lids - 1) * kept).isLessThan(100L * units);
        BigDecimal arrives =
                items.get(0).needed().multiply(new BigDecimal(kept)).movePointLeft(2);
        assertThat(arrives.subtract(new BigDecimal(units)).abs()).isLessThan(new BigDecimal("1e-25"));
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
