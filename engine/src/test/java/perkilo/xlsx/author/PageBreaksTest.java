package perkilo.xlsx.author;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** Parts that fit on a page are kept on one page. */
final class PageBreaksTest {

    private static final double HEADING = 24;
    private static final double ROW = 17;
    private static final double PAGE = 400;

    private final SheetBuilder sheet = new SheetBuilder("Parts");
    private final List<Integer> headings = new ArrayList<>();
    private int next;

    private PageBreaksTest part(int rows) {
        headings.add(next);
        sheet.text(next++, 0, "Part", Look.SECTION);
        IntStream.range(0, rows).forEach(row -> sheet.text(next++, 0, "row", Look.PLAIN));
        return this;
    }

    private List<Integer> breaks() {
        return PageBreaks.of(sheet.build(), PAGE);
    }

    /** A page can hold a heading and 22 rows. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 8, 13, 21, 22})
    void no_page_ends_within_a_part_that_fits(int rows) {
        IntStream.range(0, 30).forEach(any -> part(rows));
        int perPage = (int) (PAGE / (HEADING + rows * ROW));
        List<Integer> expected = IntStream.range(1, 30)
                .filter(part -> part % perPage == 0)
                .mapToObj(headings::get)
                .toList();
        assertThat(breaks()).isEqualTo(expected);
    }

    @Test
    void a_part_that_no_page_holds_goes_on_where_the_page_is_full() {
        part(10).part(40);
        // 24 + 10 × 17 + 24 + 10 × 17 = 388, so the page is full before the eleventh row; the next takes 23 rows
        assertThat(breaks()).containsExactly(headings.get(1) + 11, headings.get(1) + 11 + 23);
    }

    @Test
    void the_heading_of_a_long_part_does_not_stand_alone_at_the_end() {
        part(19).part(40);
        // 347 are used: the heading and one row would fit, but not three
        assertThat(breaks()).first().isEqualTo(headings.get(1));
    }

    @Test
    void what_has_a_name_stays_whole_under_it() {
        part(5);
        int named = next;
        sheet.text(next++, 0, "5 × Balm", Look.ANSWER);
        part(6).part(9);
        // 109 are used: the name and its first part would fit, 256 in all, but not the second as well, 433
        assertThat(breaks()).containsExactly(named);
    }

    @Test
    void what_a_sheet_says_itself_holds() {
        sheet.pageBreakBefore(3);
        part(10);
        assertThat(breaks()).containsExactly(3);
    }

    @Test
    void repeated_titles_take_room_on_each_page() {
        sheet.freeze(2, 0).text(next++, 0, "Title", Look.TITLE).text(next++, 0, "hint", Look.HINT);
        part(10).part(10).part(10);
        // 30 + 17 for the titles; one part is 194, so two are 435 with the titles
        assertThat(breaks()).isEqualTo(headings.subList(1, 3));
    }

    @Test
    void a_sheet_without_parts_is_left_to_the_office_suite() {
        IntStream.range(0, 200).forEach(row -> sheet.text(row, 0, "row", Look.PLAIN));
        ResultSheet table = sheet.build();
        assertThat(PageBreaks.of(table, PAGE)).isEmpty();
    }
}
