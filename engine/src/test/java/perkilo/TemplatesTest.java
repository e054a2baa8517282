package perkilo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.reading.BookReader;
import perkilo.reading.Sources;
import perkilo.templates.TemplateWriter;

/** The templates that are checked in. */
@Tag("slow")
final class TemplatesTest {

    private static final Path TEMPLATES = Path.of("../workbook-templates");

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"launch", "orders", "emollients", "minimal"})
    void a_template_is_what_its_tables_make_today(String name) throws IOException {
        Path made = folder.resolve(name + ".xlsx");
        TemplateWriter.write(TEMPLATES.resolve("source").resolve(name), made);

        assertThat(parts(made))
                .as("mvn -q compile, then TemplateWriter workbook-templates makes them again")
                .isEqualTo(parts(TEMPLATES.resolve(name + ".xlsx")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"launch", "orders", "emollients", "minimal"})
    void a_template_reads_without_errors(String name) throws IOException {
        Reading<Book> reading = new BookReader()
                .read(
                        new Sources(TEMPLATES.resolve(name + ".xlsx"), List.of(), null, null),
                        LocalDate.of(2026, 11, 20));

        assertThat(reading.findings()).filteredOn(Finding::isError).isEmpty();
        assertThat(reading.value().formulas()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"launch", "orders", "emollients"})
    void a_templates_tables_come_back_from_its_workbook(String name) throws IOException {
        Path source = TEMPLATES.resolve("source").resolve(name);
        Book book = new BookReader()
                .read(new Sources(TEMPLATES.resolve(name + ".xlsx"), List.of(), null, null), LocalDate.of(2026, 11, 20))
                .value();

        assertThat(book.materials()).hasSize(rows(source.resolve("Materials.csv")));
        assertThat(book.suppliers()).hasSize(rows(source.resolve("Suppliers.csv")));
        assertThat(book.products()).hasSize(rows(source.resolve("Products.csv")));
        assertThat(book.runs()).hasSize(rows(source.resolve("Runs.csv")));
        assertThat(book.offers().stream()
                        .mapToInt(offer -> offer.breaks().size())
                        .sum())
                .isEqualTo(rows(source.resolve("Offers.csv")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"launch", "orders", "emollients", "minimal"})
    void the_first_page_shows_every_line_whole(String name) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(TEMPLATES.resolve(name + ".xlsx")))) {
            XSSFSheet start = book.getSheet("Start here");
            double charactersWide = start.getColumnWidth(0) / 256.0;
            for (Row row : start) {
                String words = row.getCell(0).getStringCellValue();
                double lines = Math.ceil(words.length() / charactersWide);
                assertThat((double) row.getHeightInPoints()).as(words).isGreaterThanOrEqualTo(15 * lines);
            }
            double centimetresWide = start.getColumnWidthInPixels(0) / 96.0 * 2.54;
            assertThat(start.getPrintSetup().getLandscape()).isTrue();
            assertThat(centimetresWide).as("between the margins of A4").isLessThan(29.7 - 2 * 0.7 * 2.54);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"launch", "orders", "emollients", "minimal"})
    void no_word_of_a_head_is_broken(String name) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(TEMPLATES.resolve(name + ".xlsx")))) {
            for (Sheet sheet : book) {
                for (Cell head : sheet.getRow(0)) {
                    double charactersWide = sheet.getColumnWidth(head.getColumnIndex()) / 256.0;
                    for (String word : head.getStringCellValue().split(" ", -1)) {
                        assertThat((double) word.length())
                                .as("%s on %s", word, sheet.getSheetName())
                                .isLessThan(charactersWide);
                    }
                }
            }
        }
    }

    private static int rows(Path csv) throws IOException {
        return (int) Files.readAllLines(csv).stream()
                .skip(1)
                .filter(line -> !line.isBlank())
                .count();
    }

    private static Map<String, String> parts(Path file) throws IOException {
        Map<String, String> parts = new TreeMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (var entry : Collections.list(zip.entries())) {
                try (var in = zip.getInputStream(entry)) {
                    parts.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        return parts;
    }
}
