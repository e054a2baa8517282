package perkilo.sheet;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.origin.Decimals;
import perkilo.origin.Origin;

/** Cells, their names, and the numbers in them. */
final class SheetBuilderTest {

    private final SheetBuilder sheet = new SheetBuilder("Cost detail");

    @Test
    void a_figure_that_agrees_with_the_engine_is_written() {
        BigDecimal engine = new BigDecimal("1000");

        Expr cell = sheet.checked(3, 2, Expr.of(new BigDecimal("1000.000001")), engine, NumberFormat.WHOLE, Look.PLAIN);

        assertThat(cell.formula(name -> name)).isEqualTo("'Cost detail'!C4");
        assertThat(sheet.build().cells().get(3)).containsKey(2);
    }

    @Test
    void a_figure_that_disagrees_with_the_engine_stops_the_sheet() {
        assertThatThrownBy(() -> sheet.checked(
                        3,
                        2,
                        Expr.of(new BigDecimal("1000.0000011")),
                        new BigDecimal("1000"),
                        NumberFormat.WHOLE,
                        Look.PLAIN))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("Cost detail!C4 computes 1000.0000011, but the engine 1000");
        assertThat(sheet.build().cells()).isEmpty();
    }

    @Test
    void nothing_agrees_with_nothing_but_for_the_last_digits() {
        assertThatCode(() -> sheet.checked(
                        0, 0, Expr.of(new BigDecimal("1e-13")), BigDecimal.ZERO, NumberFormat.WHOLE, Look.PLAIN))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> sheet.checked(
                        0, 0, Expr.of(new BigDecimal("1e-11")), BigDecimal.ZERO, NumberFormat.WHOLE, Look.PLAIN))
                .isInstanceOf(IllegalStateException.class);
    }

    /** Words and gaps between figures are ignored in a sum, as in a spreadsheet. */
    @Test
    void a_column_is_added_up_from_its_figures() {
        sheet.value(1, 2, Expr.of(5), NumberFormat.WHOLE, Look.PLAIN);
        sheet.text(2, 2, "three", Look.LABEL);
        sheet.value(4, 2, Expr.of(7), NumberFormat.WHOLE, Look.PLAIN);
        sheet.value(5, 2, Expr.of(11), NumberFormat.WHOLE, Look.PLAIN);

        Expr sum = sheet.sumOfColumn(2, 1, 4);

        assertThat(sum.value()).isEqualByComparingTo("12");
        assertThat(sum.formula(name -> name)).isEqualTo("SUM('Cost detail'!C2:C5)");
    }

    @Test
    void only_a_cell_of_a_sheet_can_be_led_to() {
        sheet.text(0, 0, "price", Look.PLAIN, new Origin("book.xlsx", "Offers", "F12"));
        sheet.text(1, 0, "price", Look.PLAIN, new Origin("prices.csv", "", "line 4"));
        sheet.text(2, 0, "price", Look.PLAIN, Origin.NONE);

        assertThat(sheet.build().cells().values())
                .extracting(row -> requireNonNull(row.get(0)).link())
                .containsExactly(new Origin("book.xlsx", "Offers", "F12"), null, null);
    }

    /** All 16,384 columns of an XLSX sheet, against Apache POI. */
    @Test
    void columns_are_named_as_a_spreadsheet_names_them() {
        for (int column = 0; column < 16_384; column++) {
            assertThat(SheetNames.column(column)).isEqualTo(CellReference.convertNumToColString(column));
        }
        assertThat(SheetNames.cell(0, 0)).isEqualTo("A1");
        assertThat(SheetNames.cell(1_048_575, 16_383)).isEqualTo("XFD1048576");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Offers", "Cost detail", "O'Neil & Co", "2026", "A1", "R1C1", "TRUE", "Preise €", "a!b", "+x"})
    void any_name_of_a_sheet_can_stand_in_a_formula(String name) {
        Sheets sheets = new Sheets();
        sheets.type(name, "B2", new BigDecimal("4.5"));

        assertThat(sheets.compute(Expr.cell(name, "B2", new BigDecimal("4.5")).times(Expr.of(2))))
                .isEqualTo(9);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "12.500, 12.5",
        "1E+3, 1000",
        "1E-7, 0.0000001",
        "0.00, 0",
        "-3.10, -3.1",
        "0.12345678901234567890, 0.12345678901234568",
        "123456789012345678901, 123456789012345680000"
    })
    void numbers_as_a_spreadsheet_keeps_them(BigDecimal number, String plain) {
        assertThat(Decimals.plain(number)).isEqualTo(plain);
    }

    @ParameterizedTest(name = "{0}: {1} or {2}")
    @CsvSource({
        "'1234567.895', '1,234,567.9', '1,234,567.90'",
        "'999.995', '1,000', '1,000.00'",
        "'0.004', '0', '0.00'",
        "'-0.004', '0', '0.00'",
        "'-1234.5', '-1,234.5', '-1,234.50'",
        "'-123', '-123', '-123.00'",
        "'1E+6', '1,000,000', '1,000,000.00'"
    })
    void numbers_for_a_person(BigDecimal number, String readable, String amount) {
        assertThat(Decimals.readable(number, 2)).isEqualTo(readable);
        assertThat(Decimals.amount(number, 2)).isEqualTo(amount);
    }

    @Test
    void money_shows_its_currency() {
        assertThat(NumberFormat.money("EUR", 2).code()).isEqualTo("#,##0.00\\ \"EUR\";-#,##0.00\\ \"EUR\";\"–\"");
        assertThat(NumberFormat.money("JPY", 0).code()).isEqualTo("#,##0\\ \"JPY\";-#,##0\\ \"JPY\";\"–\"");
    }
}
