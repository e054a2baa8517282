package perkilo.xlsx.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipFile;
import org.apache.commons.compress.archivers.zip.UnicodePathExtraField;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.xlsx.author.SampleReport;

/** The parts of any workbook stay unchanged, and running again does not make the file grow. */
final class EveryKindOfBookTest {

    private static final Set<String> MAY_CHANGE = Set.of(
            "[Content_Types].xml",
            "xl/workbook.xml",
            "xl/_rels/workbook.xml.rels",
            "xl/styles.xml",
            "book/Book.xml",
            "book/_rels/Book.xml.rels");

    /**
     * Materials (2 × 25 × 6.40 × 1.025 + 20 × 3.15 + 30 × 1.85 + 5 × 21.70 × 1.065) / 1000, jar, labour, 310 / 1000.
     */
    private static final double UNIT_COST = 0.5620525 + 0.42 + 0.115 + 0.31;

    @TempDir
    private Path folder = Path.of("");

    static Stream<Arguments> books() {
        Stream<Arguments> handMade = SampleBooks.handMade().stream()
                .map(sample -> Arguments.of(
                        sample.what(), sample.ending(), sample.book().bytes()));
        return Stream.concat(
                handMade, Stream.of(Arguments.of("charts, comments, pictures, tables", "xlsx", RichBook.bytes())));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void the_persons_parts_stay_byte_for_byte(String what, String ending, byte[] bytes) throws IOException {
        Path book = Files.write(folder.resolve("book." + ending), bytes);
        Path result = folder.resolve("result." + ending);
        new WorkbookWriter().write(book, SampleReport.build(), result);

        Map<String, String> before = new HashMap<>(Zips.contents(book));
        before.keySet().removeAll(MAY_CHANGE);
        before.remove("xl/calcChain.xml");
        assertThat(Zips.contents(result)).containsAllEntriesOf(before);
        assertThat(Zips.contents(result)).doesNotContainKey("xl/calcChain.xml");
        assertThat(Files.readAllBytes(book)).isEqualTo(bytes);
    }

    @Test
    void where_a_part_is_long_all_stay_packed_as_they_were() throws IOException {
        Path book = Files.write(
                folder.resolve("book.xlsx"), SampleBooks.longPicture().bytes(Deflater.BEST_SPEED));
        Path result = folder.resolve("result.xlsx");
        new WorkbookWriter().write(book, SampleReport.build(), result);

        Map<String, String> before = new HashMap<>(Zips.raw(book));
        before.keySet().removeAll(MAY_CHANGE);
        assertThat(Zips.raw(result)).containsAllEntriesOf(before);
    }

    /** One library reads a part's name from an extra field, the other does not. */
    @Test
    void a_part_with_a_second_name_is_copied_under_its_first() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(bytes)) {
            zip.setUseLanguageEncodingFlag(false); // with it, no second name counts
            for (Map.Entry<String, byte[]> part :
                    SampleBooks.longPicture().parts().entrySet()) {
                zip.putArchiveEntry(new ZipArchiveEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeArchiveEntry();
            }
            ZipArchiveEntry named = new ZipArchiveEntry("docProps/note.xml");
            byte[] first = "docProps/note.xml".getBytes(StandardCharsets.UTF_8);
            named.addExtraField(new UnicodePathExtraField("docProps/nöte.xml", first));
            zip.putArchiveEntry(named);
            zip.write("<note/>".getBytes(StandardCharsets.UTF_8));
            zip.closeArchiveEntry();
        }
        Path book = Files.write(folder.resolve("book.xlsx"), bytes.toByteArray());
        Path result = folder.resolve("result.xlsx");
        new WorkbookWriter().write(book, SampleReport.build(), result);
        try (ZipFile zip = new ZipFile(result.toFile())) {
            assertThat(zip.getEntry("docProps/note.xml")).isNotNull();
        }
    }

    @Test
    void a_part_that_does_not_unpack_to_what_it_was_is_refused() throws IOException {
        byte[] bytes = HandMadeBook.least()
                .part("docProps/note.xml", "<note>0.30 % preservative</note>")
                .bytes(Deflater.NO_COMPRESSION);
        String text = new String(bytes, StandardCharsets.ISO_8859_1).replace("0.30 %", "0.80 %");
        Path book = Files.write(folder.resolve("book.xlsx"), text.getBytes(StandardCharsets.ISO_8859_1));
        Path result = folder.resolve("result.xlsx");
        assertThatThrownBy(() -> new WorkbookWriter().write(book, SampleReport.build(), result))
                .isInstanceOf(UnwritableFileException.class)
                .hasMessageContaining("its part docProps/note.xml cannot be unpacked");
        assertThat(result).doesNotExist();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void another_program_reads_the_result(String what, String ending, byte[] bytes) throws IOException {
        if (what.startsWith("Strict")) {
            return; // this library cannot read Strict workbooks
        }
        Path book = Files.write(folder.resolve("book." + ending), bytes);
        Path result = folder.resolve("result." + ending);
        new WorkbookWriter().write(book, SampleReport.build(), result);

        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(result))) {
            Sheet summary = workbook.getSheet(SampleReport.SUMMARY);
            assertThat(summary.getRow(0).getCell(0).getStringCellValue()).isEqualTo("Cost summary");
            assertThat(summary.getRow(6).getCell(5).getNumericCellValue()).isCloseTo(UNIT_COST, within());
            assertThat(workbook.getSheet("Offers").getRow(1).getCell(3).getNumericCellValue())
                    .isEqualTo(6.4);
            assertThat(workbook.getForceFormulaRecalculation()).isTrue();
            assertThat(workbook.isMacroEnabled()).isEqualTo(ending.equals("xlsm"));
            workbook.getCreationHelper()
                    .createFormulaEvaluator()
                    .evaluateFormulaCell(summary.getRow(6).getCell(5));
            assertThat(summary.getRow(6).getCell(5).getNumericCellValue()).isCloseTo(UNIT_COST, within());
        }
    }

    private static Offset<Double> within() {
        return Offset.offset(1e-12);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void running_again_lets_nothing_grow(String what, String ending, byte[] bytes) throws IOException {
        Path book = Files.write(folder.resolve("book." + ending), bytes);
        new WorkbookWriter().writeInPlace(book, SampleReport.build(), LocalDate.of(2026, 11, 25));
        Map<String, String> first = Zips.raw(book);
        for (int run = 0; run < 5; run++) {
            new WorkbookWriter().writeInPlace(book, SampleReport.build(), LocalDate.of(2026, 11, 25));
        }
        assertThat(Zips.raw(book)).isEqualTo(first);
    }
}
