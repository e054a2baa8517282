package perkilo.xlsx.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.sheet.Look;
import perkilo.sheet.Report;
import perkilo.sheet.SheetBuilder;
import perkilo.xlsx.author.SampleBook;
import perkilo.xlsx.author.SampleReport;

/** The files and tabs after results are written. */
final class WorkbookWriterTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final WorkbookWriter writer = new WorkbookWriter();

    @TempDir
    private Path folder = Path.of("");

    @Test
    void writing_in_place_keeps_every_earlier_state() throws IOException {
        Path book = SampleBook.in(folder);
        byte[] original = Files.readAllBytes(book);
        Written first = writer.writeInPlace(book, SampleReport.build(), TODAY);
        byte[] afterFirst = Files.readAllBytes(book);
        Written second = writer.writeInPlace(book, SampleReport.build(), TODAY);

        assertThat(first.backup()).isEqualTo(folder.resolve("cream.backup-2026-11-25-1.xlsx"));
        assertThat(second.backup()).isEqualTo(folder.resolve("cream.backup-2026-11-25-2.xlsx"));
        assertThat(folder.resolve("cream.backup-2026-11-25-1.xlsx")).hasBinaryContent(original);
        assertThat(folder.resolve("cream.backup-2026-11-25-2.xlsx")).hasBinaryContent(afterFirst);
        assertThat(namesIn(folder))
                .containsExactlyInAnyOrder(
                        "cream.xlsx", "cream.backup-2026-11-25-1.xlsx", "cream.backup-2026-11-25-2.xlsx");
    }

    @Test
    void a_persons_sheet_with_our_name_is_never_touched() throws IOException {
        Path book = SampleBook.in(folder);
        change(
                book,
                workbook -> workbook.createSheet("COST summary")
                        .createRow(0)
                        .createCell(0)
                        .setCellValue("mine"));
        Path result = folder.resolve("result.xlsx");
        Written written = writer.write(book, SampleReport.build(), result);

        assertThat(written.sheets()).isEqualTo(Map.of("Cost summary", "Cost summary 2", "Cost detail", "Cost detail"));
        assertThat(tabs(result))
                .containsExactly("Offers", "Köln's notes", "COST summary", "Cost summary 2", "Cost detail");
        assertThat(Zips.text(result, "xl/charts/chart1.xml")).contains("'Cost summary 2'!$F$6:$F$10");

        Path again = folder.resolve("again.xlsx");
        assertThat(writer.write(result, SampleReport.build(), again).sheets()).isEqualTo(written.sheets());
        assertThat(tabs(again)).isEqualTo(tabs(result));
    }

    @Test
    void a_sheet_of_ours_that_a_person_renamed_is_the_persons() throws IOException {
        Path book = SampleBook.in(folder);
        writer.writeInPlace(book, SampleReport.build(), TODAY);
        change(book, workbook -> workbook.setSheetName(workbook.getSheetIndex("Cost summary"), "Costs in spring"));
        Written written = writer.writeInPlace(book, SampleReport.build(), TODAY);

        assertThat(tabs(book))
                .containsExactly("Offers", "Köln's notes", "Costs in spring", "Cost detail", "Cost summary");
        assertThat(written.sheets()).containsEntry("Cost summary", "Cost summary");
    }

    @Test
    void sheets_keep_their_places_when_a_person_moves_them() throws IOException {
        Path book = SampleBook.in(folder);
        writer.writeInPlace(book, SampleReport.build(), TODAY);
        change(book, workbook -> workbook.setSheetOrder("Cost summary", 0));
        writer.writeInPlace(book, SampleReport.build(), TODAY);
        assertThat(tabs(book)).containsExactly("Cost summary", "Offers", "Köln's notes", "Cost detail");
    }

    @Test
    void sheets_of_another_command_stay() throws IOException {
        Path book = SampleBook.in(folder);
        writer.writeInPlace(book, SampleReport.build(), TODAY);
        Report swaps = new Report(List.of(
                new SheetBuilder("Swaps").text(0, 0, "Swaps", Look.TITLE).build()));
        writer.writeInPlace(book, swaps, TODAY);
        assertThat(tabs(book)).containsExactly("Offers", "Köln's notes", "Cost summary", "Cost detail", "Swaps");
    }

    @Test
    void an_earlier_result_is_replaced_and_anything_else_is_kept() throws IOException {
        Path book = SampleBook.in(folder);
        Path result = folder.resolve("result.xlsx");
        assertThat(writer.write(book, SampleReport.build(), result).backup()).isNull();
        assertThat(writer.write(book, SampleReport.build(), result).backup()).isNull();

        change(
                result,
                workbook -> workbook.getSheet("Offers").getRow(1).getCell(3).setCellValue(7.1));
        assertKept(result, () -> writer.write(book, SampleReport.build(), result));
        assertThat(writer.write(book, SampleReport.build(), result).backup()).isNull();

        change(result, workbook -> workbook.createSheet("What we agreed"));
        assertKept(result, () -> writer.write(book, SampleReport.build(), result));

        Files.copy(book, result, StandardCopyOption.REPLACE_EXISTING);
        assertKept(result, () -> writer.write(book, SampleReport.build(), result));

        Files.writeString(result, "no workbook at all");
        assertKept(result, () -> writer.write(book, SampleReport.build(), result));
    }

    @Test
    void what_stands_in_the_place_of_sheets_alone_is_kept_as_well() throws IOException {
        Path alone = folder.resolve("alone.xlsx");
        assertThat(writer.writeAlone(SampleReport.build(), alone).backup()).isNull();
        assertThat(writer.writeAlone(SampleReport.build(), alone).backup()).isNull();
        Files.copy(SampleBook.in(folder), alone, StandardCopyOption.REPLACE_EXISTING);
        assertKept(alone, () -> writer.writeAlone(SampleReport.build(), alone));
    }

    private static void assertKept(Path target, Callable<Written> writing) throws IOException {
        byte[] before = Files.readAllBytes(target);
        Path backup = assertDoesNotThrow(writing::call).backup();
        assertThat(backup).isNotNull().hasBinaryContent(before);
        assertThat(target).isRegularFile();
        assertThat(Files.readAllBytes(target)).isNotEqualTo(before);
    }

    @Test
    void what_a_person_put_on_our_sheet_goes_with_it() throws IOException {
        Path book = SampleBook.in(folder);
        writer.writeInPlace(book, SampleReport.build(), TODAY);
        List<String> parts = List.copyOf(Zips.raw(book).keySet());
        change(book, workbook -> {
            var sheet = workbook.getSheet("Cost detail");
            var drawing = sheet.createDrawingPatriarch();
            var comment = drawing.createCellComment(drawing.createAnchor(0, 0, 0, 0, 1, 1, 3, 3));
            comment.setString("hm");
            sheet.getRow(0).getCell(0).setCellComment(comment);
        });
        writer.writeInPlace(book, SampleReport.build(), TODAY);
        assertThat(Zips.raw(book).keySet()).containsExactlyInAnyOrderElementsOf(parts);
    }

    @Test
    void a_protected_structure_is_refused() throws IOException {
        Path book = SampleBook.in(folder);
        change(book, XSSFWorkbook::lockStructure);
        assertRefused(
                book,
                folder.resolve("result.xlsx"),
                book + ": The workbook is protected against new sheets. Remove the protection of its structure"
                        + " (Review, Protect Workbook).");
    }

    @Test
    void the_workbook_is_never_its_own_target() throws IOException {
        Path book = SampleBook.in(folder);
        assertRefused(
                book,
                folder.resolve(".").resolve("cream.xlsx"),
                book + " would be replaced by its own result. Give the result another name, or write it in place,"
                        + " which keeps a backup.");
    }

    @Test
    void the_ending_tells_whether_there_are_macros() throws IOException {
        Path book = SampleBook.in(folder);
        Path target = folder.resolve("result.xlsm");
        assertRefused(
                book,
                target,
                target + " must end in .xlsx, like the workbook. Spreadsheet programs refuse any other ending.");
    }

    @Test
    void other_files_are_refused() throws IOException {
        Path text = Files.writeString(folder.resolve("list.xlsx"), "Supplier;Item");
        assertRefused(
                text,
                folder.resolve("result.xlsx"),
                text + ": The file is not an XLSX or XLSM file, or it is protected by a password.");
        Path zip = Files.write(
                folder.resolve("zip.xlsx"),
                new HandMadeBook().part("readme.txt", "hello").bytes());
        assertRefused(zip, folder.resolve("result.xlsx"), zip + ": The file is not an XLSX or XLSM file.");
        Path none = folder.resolve("none.xlsx");
        assertRefused(none, folder.resolve("result.xlsx"), none + " does not exist. Check the name and the folder.");
    }

    @Test
    void broken_xml_is_refused() throws IOException {
        Path book = Files.write(
                folder.resolve("broken.xlsx"),
                HandMadeBook.least().with("xl/workbook.xml", "</sheets>", "").bytes());
        assertRefused(
                book,
                folder.resolve("result.xlsx"),
                book + ": The workbook is damaged: its XML is not well-formed."
                        + " Open it in your spreadsheet program and save it again.");
    }

    @Test
    void a_file_that_is_open_elsewhere_is_not_replaced() throws IOException {
        Path book = SampleBook.in(folder);
        Path target = folder.resolve("result.xlsx");
        Files.createFile(folder.resolve(".~lock.result.xlsx#"));
        assertRefused(book, target, target + " is open in another program. Close it there and run again.");
    }

    @Test
    void a_missing_folder_is_named() throws IOException {
        Path book = SampleBook.in(folder);
        Path target = folder.resolve("out").resolve("result.xlsx");
        assertRefused(
                book,
                target,
                target
                        + " cannot be written because its folder does not exist. Make the folder or choose another place.");
    }

    private void assertRefused(Path book, Path target, String message) throws IOException {
        List<String> before = namesIn(folder);
        assertThatThrownBy(() -> writer.write(book, SampleReport.build(), target))
                .isInstanceOf(UnwritableFileException.class)
                .hasMessage(message);
        assertThat(namesIn(folder)).isEqualTo(before);
    }

    private static void change(Path book, Consumer<XSSFWorkbook> change) throws IOException {
        try (InputStream in = Files.newInputStream(book);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            change.accept(workbook);
            try (OutputStream out = Files.newOutputStream(book)) {
                workbook.write(out);
            }
        }
    }

    private static List<String> tabs(Path book) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(book))) {
            List<String> names = new ArrayList<>();
            workbook.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));
            return names;
        }
    }

    private static List<String> namesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }
}
