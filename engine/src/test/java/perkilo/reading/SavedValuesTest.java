package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;

/** The saved value of a formula counts only if some program has computed it. */
final class SavedValuesTest {

    private static TestBook with(String formula, double saved, boolean computesOnOpening) {
        return TestBook.sound().with(book -> {
            XSSFCell cell = book.getSheet("Offers").getRow(1).getCell(5);
            cell.setCellFormula(formula);
            cell.setCellValue(saved);
            book.setForceFormulaRecalculation(computesOnOpening);
        });
    }

    private static String price(TestBook book) {
        return book.read()
                .value()
                .offersFor("Shea butter")
                .get(0)
                .breaks()
                .get(0)
                .price()
                .value()
                .stripTrailingZeros()
                .toPlainString();
    }

    @Test
    void a_saved_value_is_trusted() {
        assertThat(price(with("2*3", 7, false))).isEqualTo("7");
    }

    @Test
    void a_workbook_that_asks_for_computing_is_computed() {
        assertThat(price(with("2*3", 7, true))).isEqualTo("6");
    }

    @Test
    void nothing_but_zeros_was_computed_by_no_program() {
        assertThat(price(with("2*3", 0, false))).isEqualTo("6");
    }

    @Test
    void a_zero_among_computed_values_is_a_value() {
        TestBook book = with("2*3", 0, false).with(sheets -> {
            XSSFCell cell = sheets.getSheet("Runs").getRow(1).createCell(4);
            cell.setCellFormula("1+1");
            cell.setCellValue(2);
        });
        assertThat(price(book)).isEqualTo("0");
    }

    @Test
    void what_cannot_be_computed_is_an_error_with_its_cell() {
        assertThat(with("UNKNOWNFUNCTION(1)", 7, true).findings())
                .anyMatch(text -> text.startsWith("error Offers!F2: Price is ") && text.contains("formula"));
    }

    @Test
    void the_program_that_wrote_it_may_never_compute() {
        TestBook book = with("2*3", 7, false).with(sheets -> {
            var about = sheets.getProperties().getExtendedProperties().getUnderlyingProperties();
            about.setApplication("Microsoft Excel");
            about.setAppVersion("3.1");
        });
        assertThat(price(book)).isEqualTo("6");
        assertThat(price(with("2*3", 7, false).with(sheets -> {
                    var about = sheets.getProperties().getExtendedProperties().getUnderlyingProperties();
                    about.setApplication("Microsoft Excel");
                    about.setAppVersion("16.0300");
                })))
                .isEqualTo("7");
    }
}
