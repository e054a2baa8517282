package perkilo.sheet.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** A table is laid out, computed and marked as its columns say. */
final class TableTest {

    /** The jars of a run: their number and their total cost. */
    private record Jars(String name, int units, String total) {}

    private final Column<Jars> name =
            Column.<Jars>of("name", "Run").words(Jars::name).look(Look.LABEL).width(20);
    private final Column<Jars> units = Column.<Jars>of("units", "Units")
            .value(run -> BigDecimal.valueOf(run.units()))
            .format(NumberFormat.WHOLE);
    private final Column<Jars> total = Column.<Jars>of("total", "Total").value(run -> new BigDecimal(run.total()));
    private final Column<Jars> each = Column.<Jars>of("each", "Each")
            .value(run -> new BigDecimal(run.total()).divide(BigDecimal.valueOf(run.units())))
            .formula(row -> row.ref(total()).over(row.ref(units())))
            .json();

    private Column<Jars> total() {
        return total;
    }

    private Column<Jars> units() {
        return units;
    }

    private final List<Jars> runs = List.of(new Jars("small", 10, "25"), new Jars("large", 100, "200"));
    private final SheetBuilder sheet = new SheetBuilder("Result");

    private ResultSheet.Content at(ResultSheet built, int row, int column) {
        return Objects.requireNonNull(
                        Objects.requireNonNull(built.cells().get(row)).get(column))
                .content();
    }

    private String formula(ResultSheet built, int row, int column) {
        return ((ResultSheet.Value) at(built, row, column)).expr().formula(sheetName -> sheetName);
    }

    @Test
    void the_order_of_the_columns_is_the_order_of_the_list() {
        Table.of(total, name).at(sheet, 4, runs).write();

        ResultSheet built = sheet.build();
        assertThat(at(built, 4, 0)).isEqualTo(new ResultSheet.Text("Total"));
        assertThat(at(built, 4, 1)).isEqualTo(new ResultSheet.Text("Run"));
        assertThat(at(built, 6, 1)).isEqualTo(new ResultSheet.Text("large"));
        assertThat(built.columnWidths()).containsEntry(1, 20);
    }

    @Test
    void formulas_follow_their_columns_wherever_those_are() {
        Table.of(name, units, total, each).at(sheet, 0, runs).write();
        Table.of(each, units, total).at(sheet, 10, 3, runs).write();

        ResultSheet built = sheet.build();
        assertThat(formula(built, 2, 3)).isEqualTo("IFERROR('Result'!C3/'Result'!B3,0)");
        assertThat(formula(built, 11, 3)).isEqualTo("IFERROR('Result'!F12/'Result'!E12,0)");
    }

    @Test
    void a_formula_that_is_not_the_engines_figure_is_a_fault() {
        Column<Jars> wrong =
                Column.<Jars>of("wrong", "Wrong").value(run -> BigDecimal.ONE).formula(row -> row.ref(total));

        Placed<Jars> placed = Table.of(total, wrong).at(sheet, 0, runs);
        assertThatThrownBy(placed::write)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("Result!B2");
    }

    @Test
    void formulas_in_a_circle_are_found() {
        Column<Jars>[] both = circle();

        Placed<Jars> placed = Table.of(both).at(sheet, 0, runs);
        assertThatThrownBy(placed::write).hasMessageContaining("circle");
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Column<Jars>[] circle() {
        Column<Jars>[] both = new Column[2];
        both[0] = Column.<Jars>of("one", "One").formula(row -> row.ref(both[1]));
        both[1] = Column.<Jars>of("other", "Other").formula(row -> row.ref(both[0]));
        return both;
    }

    @Test
    void totals_add_up_below_the_rows_and_can_be_referred_to() {
        Column<Jars> summed = Column.<Jars>of("total", "Total")
                .value(run -> new BigDecimal(run.total()))
                .sum(new BigDecimal("225"));
        Column<Jars> share = Column.<Jars>of("share", "Share")
                .formula(row -> row.ref(summed).over(row.table().total(summed)));

        Placed<Jars> placed = Table.of(name.totalWords("All"), summed, share)
                .at(sheet, 0, runs)
                .write();

        ResultSheet built = sheet.build();
        assertThat(placed.next()).isEqualTo(4);
        assertThat(at(built, 3, 0)).isEqualTo(new ResultSheet.Text("All"));
        assertThat(formula(built, 3, 1)).isEqualTo("SUM('Result'!B2:B3)");
        assertThat(formula(built, 1, 2)).isEqualTo("IFERROR('Result'!B2/'Result'!B4,0)");
    }

    @Test
    void a_mark_speaks_of_columns_and_lands_on_its_own() {
        Column<Jars> marked = Column.<Jars>of("hint", "").words(run -> "").mark(Mark.belowZero(total, Look.ERROR));

        Table.of(name, units, total, marked).at(sheet, 0, runs).write();

        assertThat(sheet.build().highlights())
                .containsExactly(
                        new ResultSheet.Highlight("D2:D3", new ResultSheet.Holds("ROUND(C2,9)<0"), Look.ERROR));
    }

    @Test
    void a_rows_cells_add_up_over_columns_beside_each_other() {
        Column<Jars> both = Column.<Jars>of("both", "Both").formula(row -> row.sum(List.of(units, total)));
        Placed<Jars> placed =
                Table.of(name, units, total, both).at(sheet, 0, runs).write();

        assertThat(formula(sheet.build(), 2, 3)).isEqualTo("SUM('Result'!B3:C3)");
        assertThat(placed.ref(1, both).value()).isEqualByComparingTo("300");
        assertThatThrownBy(() -> placed.sum(0, List.of(total, units))).hasMessageContaining("units");
    }

    @Test
    void a_column_without_heading_and_words_is_a_gap() {
        Table.of(name, Column.<Jars>of("gap", "").withoutHeading(), units)
                .at(sheet, 0, runs)
                .write();

        ResultSheet built = sheet.build();
        assertThat(built.cells().get(0)).containsOnlyKeys(0, 2);
        assertThat(at(built, 1, 2)).isInstanceOf(ResultSheet.Value.class);
    }

    @Test
    void cells_of_one_row_are_marked_from_column_to_column() {
        Table.of(name, units, total)
                .at(sheet, 0, runs)
                .write()
                .mark(runs.get(1), units, total, Mark.belowZero(total, Look.ERROR));

        assertThat(sheet.build().highlights())
                .containsExactly(
                        new ResultSheet.Highlight("B3:C3", new ResultSheet.Holds("ROUND(C3,9)<0"), Look.ERROR));
    }

    @Test
    void a_sentence_refers_to_other_cells_of_its_row() {
        Column<Jars> said = Column.<Jars>of("said", "In words")
                .sentence(row -> List.of(new ResultSheet.Fixed(row.ref(total), 0), new ResultSheet.Words(" EUR")));

        Table.of(name, total, said).at(sheet, 0, runs).write();

        ResultSheet.Sentence sentence = (ResultSheet.Sentence) at(sheet.build(), 2, 2);
        assertThat(sentence.formula(sheetName -> sheetName)).isEqualTo("FIXED('Result'!B3,0)&\" EUR\"");
    }

    @Test
    void what_is_not_on_the_sheet_takes_no_place() {
        Column<Jars> forJson = Column.<Jars>of("code", "")
                .json(run -> run.name().toUpperCase(java.util.Locale.ROOT))
                .notOnSheet();

        Placed<Jars> placed = Table.of(name, forJson, units).at(sheet, 0, runs).write();

        assertThat(placed.column(units)).isEqualTo(1);
        assertThat(forJson.jsonOf(runs.get(0))).isEqualTo("SMALL");
        assertThatThrownBy(() -> placed.column(forJson)).hasMessageContaining("code");
    }

    @Test
    void another_table_can_begin_after_the_last_column() {
        Placed<Jars> placed = Table.of(name, units).at(sheet, 0, 2, runs).write();

        assertThat(placed.nextColumn()).isEqualTo(placed.column(units) + 1).isEqualTo(4);
    }

    @Test
    void printed_pages_repeat_the_first_columns_and_begin_where_a_column_does() {
        Table.of(name, units, total, each).at(sheet, 4, runs).pages(name, each, List.of(total));

        assertThat(sheet.build().layout().pages()).isEqualTo(new ResultSheet.Pages(6, 3, 4, 1, List.of(2)));
    }

    @Test
    void a_formula_can_ask_whether_another_column_has_a_figure() {
        Column<Jars> large = Column.<Jars>of("large", "Large")
                .value(run -> run.units() > 50 ? BigDecimal.valueOf(run.units()) : null);
        Column<Jars> twice = Column.<Jars>of("twice", "Twice")
                .formula(row -> row.has(large) ? row.ref(large).plus(row.ref(large)) : null);

        Placed<Jars> placed = Table.of(large, twice).at(sheet, 0, runs);

        assertThat(placed.hasFigure(0, twice)).isFalse();
        assertThat(placed.hasFigure(1, twice)).isTrue();
    }
}
