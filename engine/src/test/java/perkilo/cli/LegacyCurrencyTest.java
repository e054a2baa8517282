package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An offer in a currency that the euro has replaced is costed without a row in Rates, at the rate of the law. */
final class LegacyCurrencyTest {

    @TempDir
    private Path folder = Path.of("");

    /** A pack of 25 kg at 6.50 a kilogram, invoiced in euros: 162.50 divided by the rate. */
    @ParameterizedTest
    @CsvSource({"DEM, 1.95583", "HRK, 7.53450", "BGN, 1.95583"})
    void it_is_costed_and_the_rate_is_named(String currency, String rate) throws IOException {
        Ran ran = Ran.of(folder, book(currency), "cost", "--json", "--date=2026-11-20");

        assertThat(ran.exit()).as(ran.out()).isZero();
        JsonNode answer = JsonMapper.builder().build().readTree(ran.out());
        JsonNode shea = answer.get("runs").get(0).get("items").get(0);
        assertThat(shea.get("item").asText()).isEqualTo("Shea butter");
        BigDecimal perKg = new BigDecimal("6.5").divide(new BigDecimal(rate), MathContext.DECIMAL64);
        assertThat(new BigDecimal(shea.get("used").asText()).doubleValue())
                .isCloseTo(
                        perKg.doubleValue()
                                * Double.parseDouble(shea.get("needed").asText()),
                        Percentage.withPercentage(0.01)); // an invoice is in whole cents
        assertThat(answer.get("messages").toString())
                .contains("The euro has replaced " + currency, rate + " " + currency + " for 1 EUR, fixed by law");
    }

    @Test
    void the_sheets_formulas_divide_by_the_rate() throws IOException {
        Ran ran = Ran.of(folder, book("DEM"), "cost", "-q", "--date=2026-11-20");

        assertThat(ran.exit()).as(ran.out()).isZero();
        try (XSSFWorkbook costed = new XSSFWorkbook(Files.newInputStream(folder.resolve("book-costed.xlsx")))) {
            boolean found = false;
            for (var sheet : costed) {
                for (var row : sheet) {
                    for (var cell : row) {
                        boolean formula = cell.getCellType() == CellType.FORMULA;
                        found |= formula && cell.getCellFormula().contains("/1.95583");
                    }
                }
            }
            assertThat(found).as("a formula that divides by 1.95583").isTrue();
        }
    }

    private static byte[] book(String currency) {
        return RawBook.sound().set("Offers", "H2", RawBook.text(currency)).bytes();
    }
}
