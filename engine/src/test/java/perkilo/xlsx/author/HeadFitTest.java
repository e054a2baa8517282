package perkilo.xlsx.author;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.sheet.Look;
import perkilo.sheet.SheetBuilder;

/** Heads of neighbouring columns never touch. */
final class HeadFitTest {

    @ParameterizedTest
    @CsvSource({
        "Unit cost in GBP, 14, 17", // 16 letters: they might just fit into one line
        "Unit cost in GBP, 16, 17",
        "Unit cost in GBP, 17, 17", // room enough
        "Unit cost in GBP, 10, 10", // broken into two lines
    })
    void a_column_is_wider_than_a_head_in_one_line(String head, int width, int wide) {
        SheetBuilder sheet = new SheetBuilder("Any").width(3, width).text(0, 3, head, Look.HEADER);

        assertThat(HeadFit.of(sheet.build()).columnWidths()).containsEntry(3, wide);
    }

    @Test
    void other_words_widen_nothing() {
        SheetBuilder sheet = new SheetBuilder("Any").width(0, 10).text(0, 0, "Body lotion", Look.LABEL);

        assertThat(HeadFit.of(sheet.build()).columnWidths()).containsEntry(0, 10);
    }
}
