package perkilo.sheet;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Each row of a table has border lines from its first column to the last head, even if cells are missing. */
final class TableRulesTest {

    private final SheetBuilder sheet = new SheetBuilder("Any");

    @Test
    void empty_cells_of_a_row_are_ruled_as_far_as_the_heads_go() {
        heads(2, "Item", "Month 1", "Month 2", "In all");
        sheet.text(3, 0, "Shea butter", Look.LABEL);
        sheet.text(3, 2, "2 × 5 kg", Look.PLAIN);

        ResultSheet built = sheet.build();

        assertThat(built.cells().get(3)).containsOnlyKeys(0, 1, 2, 3);
        assertThat(blank(built, 3, 1)).isEqualTo(Look.PLAIN);
        assertThat(blank(built, 3, 3)).isEqualTo(Look.PLAIN);
        assertThat(cell(built, 3, 2).content()).isEqualTo(new ResultSheet.Text("2 × 5 kg"));
    }

    @Test
    void a_total_has_its_line_all_along() {
        heads(0, "Item", "Packs", "Paid");
        sheet.text(1, 0, "Shea butter", Look.LABEL);
        sheet.text(2, 0, "Total", Look.TOTAL);
        sheet.value(2, 2, Expr.of(7), NumberFormat.WHOLE, Look.TOTAL);

        assertThat(blank(sheet.build(), 2, 1)).isEqualTo(Look.TOTAL);
    }

    @Test
    void what_stands_after_a_gap_is_no_row_of_the_table() {
        heads(0, "Item", "Packs");
        sheet.text(1, 0, "Shea butter", Look.LABEL);
        sheet.text(3, 0, "Units", Look.LABEL);

        assertThat(sheet.build().cells().get(3)).containsOnlyKeys(0);
    }

    @Test
    void explanations_below_a_table_are_no_rows_of_it() {
        heads(0, "Item", "Packs");
        sheet.text(1, 0, "Change the packs to see what happens.", Look.HINT);
        sheet.text(2, 0, "Units", Look.LABEL);

        ResultSheet built = sheet.build();

        assertThat(built.cells().get(1)).containsOnlyKeys(0);
        assertThat(built.cells().get(2)).containsOnlyKeys(0);
    }

    @Test
    void a_row_that_begins_elsewhere_is_no_row_of_the_table() {
        heads(0, "Item", "Packs", "Paid");
        sheet.text(1, 1, "in EUR", Look.PLAIN);

        assertThat(sheet.build().cells().get(1)).containsOnlyKeys(1);
    }

    private void heads(int row, String... heads) {
        for (int column = 0; column < heads.length; column++) {
            sheet.text(row, column, heads[column], Look.HEADER);
        }
    }

    private static Look blank(ResultSheet sheet, int row, int column) {
        ResultSheet.Cell cell = cell(sheet, row, column);
        assertThat(cell.content()).isEqualTo(new ResultSheet.Blank());
        return cell.look();
    }

    private static ResultSheet.Cell cell(ResultSheet sheet, int row, int column) {
        return requireNonNull(requireNonNull(sheet.cells().get(row)).get(column));
    }
}
