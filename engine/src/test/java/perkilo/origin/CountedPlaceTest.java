package perkilo.origin;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;

/** A cell that is kept as a row and a column; its name is made on demand. */
final class CountedPlaceTest {

    @Test
    void a_cell_is_spelled_as_a_spreadsheet_names_it() {
        for (int column = 0; column < 16_384; column++) {
            Origin place = Origin.ofCell("book.xlsx", "Offers", 11, column);

            assertThat(place.cell()).isEqualTo(new CellReference(11, column).formatAsString());
        }
    }

    @Test
    void a_place_is_the_same_whether_its_cell_was_spelled_or_counted() {
        Origin counted = Origin.ofCell("book.xlsx", "Offers", 11, 27);
        Origin spelled = new Origin("book.xlsx", "Offers", "AB12");

        assertThat(counted).isEqualTo(spelled).hasSameHashCodeAs(spelled).hasToString("Offers!AB12");
        assertThat(counted).isNotEqualTo(Origin.ofCell("book.xlsx", "Offers", 12, 27));
        assertThat(counted).isNotEqualTo(Origin.ofCell("other.xlsx", "Offers", 11, 27));
    }

    @Test
    void a_line_of_a_text_file_is_named() {
        assertThat(Origin.ofLine("list.csv", "", 4))
                .isEqualTo(new Origin("list.csv", "", "line 4"))
                .hasToString("list.csv line 4");
    }
}
