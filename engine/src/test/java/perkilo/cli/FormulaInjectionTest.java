package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names that begin like formulas come back as words, in every result sheet of every command. */
final class FormulaInjectionTest {

    private static final String MATERIAL = "=HYPERLINK(\"http://a.invalid\",\"Shea\")";
    private static final String OTHER = "+1+cmd|' /C calc'!A0";
    private static final String SUPPLIER = "-2+3+WEBSERVICE(\"http://b.invalid\")";
    private static final String PRODUCT = "@SUM(1,2)";

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource({"cost, costed", "order, ordered", "swap, swapped"})
    void a_name_is_never_a_formula(String command, String ending) throws IOException {
        Ran ran = Ran.of(folder, book().bytes(), command);
        assertThat(ran.messages()).noneMatch(line -> line.startsWith("error"));
        assertThat(ran.exit()).isEqualTo(Exit.DONE);

        List<String> words = new ArrayList<>();
        try (InputStream in = Files.newInputStream(folder.resolve("book-" + ending + ".xlsx"));
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    row.forEach(cell -> check(cell, words));
                }
                assertThat(sheet.getHyperlinkList())
                        .allSatisfy(link -> assertThat(link.getType()).isEqualTo(HyperlinkType.DOCUMENT));
            }
        }
        assertThat(words).contains(MATERIAL, OTHER, SUPPLIER, PRODUCT);
    }

    private static void check(Cell cell, List<String> words) {
        if (cell.getCellType() == CellType.STRING) {
            words.add(cell.getStringCellValue());
        } else if (cell.getCellType() == CellType.FORMULA) {
            String outsideQuotes = cell.getCellFormula().replaceAll("\"([^\"]|\"\")*\"", "");
            assertThat(outsideQuotes).doesNotContain("HYPERLINK", "cmd", "WEBSERVICE", "|");
        }
    }

    private static RawBook book() {
        return RawBook.sound()
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Currency"),
                        List.of(SUPPLIER, MATERIAL, 25, "kg", 6.5, "kg", "EUR"),
                        List.of(SUPPLIER, OTHER, 20, "kg", 3.2, "kg", "EUR"))
                .sheet(
                        "Materials",
                        List.of("Material", "INCI name", "Functions", "Soluble in"),
                        List.of(MATERIAL, "=1+1", "emollient", "oil"),
                        List.of(OTHER, "@A1", "emollient", "oil"))
                .sheet(
                        "Balm",
                        List.of("Phase", "Material", "% w/w"),
                        List.of("A", MATERIAL, 40),
                        List.of("A", OTHER, 60))
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit"),
                        List.of(PRODUCT, "Balm", 30, "g"))
                .sheet("Runs", List.of("Product", "Units"), List.of(PRODUCT, 500))
                .sheet("Demand", List.of("Product", "Units", "Needed by"), List.of(PRODUCT, 500, "2027-03-01"));
    }
}
