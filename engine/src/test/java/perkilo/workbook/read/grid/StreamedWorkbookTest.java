package perkilo.workbook.read.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is streamed is what opening the workbook as a whole reads; what cannot be streamed is left to that. */
final class StreamedWorkbookTest {

    @TempDir
    Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"launch", "orders", "emollients", "minimal"})
    void templates_are_read_the_same_both_ways(String template) throws IOException {
        assertSame(Path.of("../workbook-templates/" + template + ".xlsx"));
    }

    @Test
    void every_kind_of_cell_is_read_the_same_both_ways() throws IOException {
        Path file = write(StreamedWorkbookTest::everything);

        assertSame(file);
        Grid sheet = StreamedWorkbook.read(file).orElseThrow().sheets().get(0);
        assertThat(sheet.at(0, 0).text()).isEqualTo("plain & <odd>");
        assertThat(sheet.at(0, 1).text()).isEqualTo("rich text");
        assertThat(sheet.at(1, 0).number()).isEqualByComparingTo("0.1");
        assertThat(sheet.at(1, 2).date()).isEqualTo(LocalDate.of(2026, 11, 2));
        assertThat(sheet.at(1, 3).isPercentFormat()).isTrue();
        assertThat(sheet.at(2, 0).kind()).isEqualTo(Cell.Kind.ERROR);
        assertThat(sheet.cells().keySet()).as("the hidden row is left out").doesNotContain(4);
    }

    @Test
    void a_formula_without_a_saved_value_is_left_to_the_evaluation() throws IOException {
        Path file = write(book -> {
            XSSFRow row = book.createSheet("One").createRow(0);
            row.createCell(0).setCellValue(2);
            row.createCell(1).setCellFormula("A1*2");
        });

        assertThat(StreamedWorkbook.read(file)).isEmpty();
        assertThat(Grids.ofPriceFile(file).sheets().get(0).at(0, 1).number()).isEqualByComparingTo("4");
    }

    @Test
    void what_unpacks_to_far_more_than_its_size_is_not_streamed() throws IOException {
        Path file = folder.resolve("bomb.xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
            zip.write("<workbook xmlns=\"x\">".getBytes(java.nio.charset.StandardCharsets.UTF_8));
            zip.write(new byte[0]);
            byte[] spaces = " ".repeat(1 << 16).getBytes(java.nio.charset.StandardCharsets.UTF_8);
            for (int times = 0; times < 1000; times++) {
                zip.write(spaces);
            }
            zip.write("</workbook>".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }

        assertThat(StreamedWorkbook.read(file)).isEmpty();
    }

    private static void assertSame(Path file) throws IOException {
        Optional<Grids> streamed = StreamedWorkbook.read(file);

        assertThat(streamed).as("it can be streamed").isPresent();
        Grids whole = WorkbookFile.read(file, Files.readAllBytes(file), false);
        assertThat(streamed.orElseThrow().findings()).isEqualTo(whole.findings());
        assertThat(streamed.orElseThrow().sheets()).hasSameSizeAs(whole.sheets());
        for (int at = 0; at < whole.sheets().size(); at++) {
            Grid one = streamed.orElseThrow().sheets().get(at);
            Grid other = whole.sheets().get(at);
            assertThat(one.cells()).as(other.sheet()).isEqualTo(other.cells());
            assertThat(one).isEqualTo(other);
        }
    }

    private interface Content {
        void fill(XSSFWorkbook book);
    }

    private Path write(Content content) throws IOException {
        Path file = folder.resolve("book.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            content.fill(book);
            book.write(out);
        }
        return file;
    }

    private static void everything(XSSFWorkbook book) {
        XSSFSheet sheet = book.createSheet("Everything & more");
        XSSFRow texts = sheet.createRow(0);
        texts.createCell(0).setCellValue("  plain   & <odd>\u00a0");
        XSSFFont bold = book.createFont();
        bold.setBold(true);
        XSSFRichTextString rich = new XSSFRichTextString("rich text");
        rich.applyFont(0, 4, bold);
        texts.createCell(1).setCellValue(rich);
        texts.createCell(7).setCellValue("line\nbreak _x0041_ \u0001");
        XSSFRow numbers = sheet.createRow(1);
        numbers.createCell(0).setCellValue(0.1);
        numbers.createCell(1).setCellValue(1.0 / 3);
        numbers.createCell(2).setCellValue(LocalDate.of(2026, 11, 2));
        numbers.getCell(2).setCellStyle(style(book, "yyyy-mm-dd"));
        numbers.createCell(3).setCellValue(0.025);
        numbers.getCell(3).setCellStyle(style(book, "0.0%"));
        numbers.createCell(4).setCellValue(12.5);
        numbers.getCell(4).setCellStyle(style(book, "[$€-407] #,##0.00"));
        numbers.createCell(5).setCellValue(1e-7);
        numbers.createCell(6).setCellValue(1.5e17);
        numbers.createCell(40).setCellValue(-7);
        XSSFRow others = sheet.createRow(2);
        others.createCell(0).setCellErrorValue(FormulaError.DIV0);
        others.createCell(1).setCellValue(true);
        others.createCell(2).setBlank();
        others.createCell(3).setCellFormula("A2*2");
        others.getCell(3).getCTCell().setV("0.2");
        sheet.createRow(4).createCell(0).setCellValue("hidden");
        sheet.getRow(4).setZeroHeight(true);
        sheet.addMergedRegion(CellRangeAddress.valueOf("A6:C7"));
        XSSFSheet hidden = book.createSheet("Hidden");
        hidden.createRow(0).createCell(0).setCellValue("unseen");
        book.setSheetHidden(1, true);
        book.createSheet("Empty");
    }

    private static CellStyle style(XSSFWorkbook book, String format) {
        CellStyle style = book.createCellStyle();
        style.setDataFormat(book.createDataFormat().getFormat(format));
        return style;
    }
}
