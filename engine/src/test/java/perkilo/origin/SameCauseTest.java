package perkilo.origin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One cause is one message, with all its places. */
final class SameCauseTest {

    private static final String WORDS = "The currency is unknown.";

    @Test
    void cells_below_each_other_are_a_range() {
        List<Finding> findings = new ArrayList<>();
        for (int row = 2; row <= 17; row++) {
            findings.add(error("H" + row));
        }
        assertThat(once(findings)).containsExactly("error Offers!H2:H17: " + WORDS);
    }

    @Test
    void gaps_part_ranges_and_columns_stay_apart() {
        assertThat(once(List.of(error("H2"), error("H3"), error("H5"), error("J6"), error("J7"))))
                .containsExactly("error Offers!H2:H3, H5, J6:J7: " + WORDS);
    }

    @Test
    void lines_of_a_text_file_are_a_range_too() {
        Origin third = Origin.ofLine("list.csv", "", 3);
        Origin fourth = Origin.ofLine("list.csv", "", 4);
        assertThat(once(List.of(Finding.warning(third, WORDS), Finding.warning(fourth, WORDS))))
                .containsExactly("warning list.csv lines 3–4: " + WORDS);
    }

    @Test
    void other_sheets_are_named_behind_the_words() {
        Finding other = Finding.error(new Origin("book.xlsx", "Gel", "B4"), WORDS);
        assertThat(once(List.of(error("H2"), other))).containsExactly("error Offers!H2: " + WORDS + " Also at Gel!B4.");
    }

    @Test
    void other_words_and_other_levels_are_other_causes_and_the_order_stays() {
        Finding note = Finding.note(new Origin("book.xlsx", "Offers", "H3"), WORDS);
        Finding words = Finding.error(new Origin("book.xlsx", "Offers", "A1"), "Something else.");
        assertThat(SameCause.once(List.of(error("H2"), words, note))).containsExactly(error("H2"), words, note);
    }

    @Test
    void many_scattered_cells_are_counted() {
        List<Finding> findings = new ArrayList<>();
        for (int row = 2; row <= 40; row += 2) {
            findings.add(error("H" + row));
        }
        assertThat(once(findings))
                .containsExactly("error Offers!H2, H4, H6, H8, H10, H12, H14, H16 and 12 more: " + WORDS);
    }

    private static Finding error(String cell) {
        return Finding.error(new Origin("book.xlsx", "Offers", cell), WORDS);
    }

    private static List<String> once(List<Finding> findings) {
        return SameCause.once(findings).stream().map(Finding::toString).toList();
    }
}
