package perkilo.xlsx.author;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.Report;
import perkilo.sheet.SheetBuilder;

/** Columns are wide enough for their numbers, as formatted by another program's library. */
final class NumberFitTest {

    private static final Links LINKS = new Links("book.xlsx", List.of(), Map.of());
    private static final List<NumberFormat> FORMATS = List.of(
            NumberFormat.WHOLE,
            NumberFormat.QUANTITY,
            NumberFormat.FACTOR,
            NumberFormat.PERCENT,
            NumberFormat.money("HUF", 2),
            NumberFormat.money("JPY", 0),
            NumberFormat.money("EUR", 4));

    private final DataFormatter formatter = new DataFormatter(Locale.ROOT);

    @Property(tries = 100)
    void every_number_fits_its_column(
            @ForAll("numbers") BigDecimal number, @ForAll @IntRange(min = 1, max = 20) int asked) throws IOException {
        SheetBuilder sheet = new SheetBuilder("Numbers");
        for (int column = 0; column < FORMATS.size(); column++) {
            sheet.width(column, asked);
            sheet.value(0, column, Expr.of(number), FORMATS.get(column), Look.PLAIN);
        }
        try (XSSFWorkbook workbook = Written.read(new Report(List.of(sheet.build())), LINKS)) {
            for (int column = 0; column < FORMATS.size(); column++) {
                String shown = formatter.formatRawCellContents(
                        number.doubleValue(), -1, FORMATS.get(column).code());
                double width = workbook.getSheetAt(0).getColumnWidth(column) / 256.0 - 182 / 256.0;
                assertThat(width).as(shown).isBetween(Math.max(asked, digits(shown)), asked + digits(shown) + 10);
            }
        }
    }

    /** Thousands of forints, billions of rupiah, fractions of a per mille, and zero; of either sign. */
    @Provide
    Arbitrary<BigDecimal> numbers() {
        return Arbitraries.bigDecimals()
                .between(new BigDecimal("-99999999999"), new BigDecimal("99999999999"))
                .ofScale(7);
    }

    /** The width of a number in digits: points and commas are half as wide, letters a little wider. */
    private static double digits(String shown) {
        double digits = 0;
        for (int at = 0; at < shown.length(); at++) {
            char sign = shown.charAt(at);
            digits += ",. -".indexOf(sign) >= 0 ? 0.5 : Character.isLetter(sign) ? 1.15 : 1;
        }
        return digits;
    }

    @ParameterizedTest(name = "{0} in {1} characters")
    @CsvSource({"12345.67, 13, 13", "123456.78, 14, 14", "1234567.89, 13, 16", "999999.996, 13, 16", "-45, 10, 10"})
    void only_a_column_that_is_too_narrow_is_widened_and_then_by_a_digit_more(
            BigDecimal amount, int asked, int expected) throws IOException {
        SheetBuilder sheet = new SheetBuilder("Numbers").widths(asked);
        sheet.value(0, 0, Expr.of(amount), NumberFormat.money("EUR", 2), Look.PLAIN);
        assertThat(width(sheet)).isEqualTo(expected);
    }

    @Test
    void a_column_without_a_width_gets_one_where_it_needs_it() throws IOException {
        SheetBuilder sheet = new SheetBuilder("Numbers");
        sheet.value(0, 0, Expr.day(LocalDate.of(2026, 11, 20)), NumberFormat.DATE, Look.PLAIN);
        assertThat(width(sheet)).isGreaterThanOrEqualTo("2026-11-20".length());
    }

    @Test
    void words_widen_nothing() throws IOException {
        SheetBuilder sheet = new SheetBuilder("Numbers").widths(9);
        sheet.text(0, 0, "Prices and rates of the costing date; amounts in home currency", Look.HINT);
        sheet.text(1, 0, "a name that runs over several lines", Look.LABEL).text(1, 1, "beside it", Look.PLAIN);
        assertThat(width(sheet)).isEqualTo(9);
    }

    private static int width(SheetBuilder sheet) throws IOException {
        try (XSSFWorkbook workbook = Written.read(new Report(List.of(sheet.build())), LINKS)) {
            return (workbook.getSheetAt(0).getColumnWidth(0) - 182) / 256;
        }
    }
}
