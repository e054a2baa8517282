package perkilo.origin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Places as messages show them. */
final class OriginTest {

    private static final Origin CELL = new Origin("book.xlsx", "Offers", "F12");

    @Test
    void a_place_is_named_as_a_person_would_point_to_it() {
        assertThat(CELL.where()).isEqualTo("Offers!F12");
        assertThat(new Origin("book.xlsx", "Offers", "").where()).isEqualTo("Offers");
        assertThat(new Origin("prices.csv", "", "line 4").where()).isEqualTo("prices.csv line 4");
        assertThat(new Origin("prices.csv", "", "").where()).isEqualTo("prices.csv");
        assertThat(Origin.NONE.where()).isEmpty();
    }

    @Test
    void only_what_stands_in_a_file_is_known() {
        assertThat(CELL.isKnown()).isTrue();
        assertThat(new Origin("prices.csv", "", "line 4").isKnown()).isTrue();
        assertThat(Origin.NONE.isKnown()).isFalse();
    }

    @Test
    void a_finding_is_one_line() {
        assertThat(Finding.error(CELL, "Price is blank")).hasToString("error Offers!F12: Price is blank");
        assertThat(Finding.warning(Origin.NONE, "look")).hasToString("warning: look");
    }

    @Test
    void a_warning_keeps_nothing_from_being_used_and_an_error_does() {
        Finding note = Finding.note(CELL, "a");
        Finding warning = Finding.warning(CELL, "b");

        assertThat(new Reading<>("value", List.of(note, warning)).hasErrors()).isFalse();
        assertThat(new Reading<>("value", List.of(note, Finding.error(CELL, "c"))).hasErrors())
                .isTrue();
    }

    @Test
    void another_value_keeps_its_place() {
        Figure figure =
                new Figure(Figure.of("0.025").value(), CELL, Figure.of("0.01").value());

        Figure other = figure.withValue(Figure.of("0.03").value());

        assertThat(other.origin()).isEqualTo(CELL);
        assertThat(other.perCell()).isEqualByComparingTo("0.01");
        assertThat(other.value()).isEqualByComparingTo("0.03");
    }
}
