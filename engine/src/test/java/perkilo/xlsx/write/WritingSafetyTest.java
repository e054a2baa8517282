package perkilo.xlsx.write;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import perkilo.sheet.Report;
import perkilo.xlsx.author.SampleBook;
import perkilo.xlsx.author.SampleReport;
import perkilo.xlsx.grid.Grids;
import perkilo.xlsx.parts.FileStamp;

/** Nothing that a person typed is lost or overwritten, whatever happens while a command runs. */
final class WritingSafetyTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path folder = Path.of("");

    private final WorkbookWriter writer = new WorkbookWriter();

    @Test
    void a_book_that_was_saved_while_the_command_ran_is_not_written_to() throws IOException {
        Path book = SampleBook.in(folder);
        FileStamp read = FileStamp.of(book);
        saveAgain(book, "Offers", 3, 7.5);
        byte[] saved = Files.readAllBytes(book);

        String message = book + " was saved by another program while the command ran. Nothing was written."
                + " Run the command again.";
        assertThatThrownBy(() -> writer.writeInPlace(read, SampleReport.build(), TODAY))
                .isInstanceOf(UnwritableFileException.class)
                .hasMessage(message);
        assertThatThrownBy(() -> writer.write(read, SampleReport.build(), folder.resolve("costed.xlsx")))
                .hasMessage(message);

        assertThat(book).hasBinaryContent(saved);
        assertThat(files()).containsExactly(book);
    }

    @Test
    void a_book_that_became_unreadable_meanwhile_is_told_the_same_way() throws IOException {
        Path book = SampleBook.in(folder);
        FileStamp read = FileStamp.of(book);
        Files.writeString(book, "half a file");

        assertThatThrownBy(() -> writer.writeInPlace(read, SampleReport.build(), TODAY))
                .hasMessageContaining("was saved by another program while the command ran");
        assertThat(book).hasContent("half a file");
    }

    @Test
    void the_result_of_another_book_is_backed_up() throws IOException {
        Path one = SampleBook.in(folder);
        Path other = Files.copy(one, folder.resolve("other.xlsx"));
        Path result = folder.resolve("costed.xlsx");
        writer.write(other, SampleReport.build(), result);
        byte[] ofOther = Files.readAllBytes(result);

        Written written = writer.write(one, SampleReport.build(), result);

        assertThat(written.backup()).isNotNull().hasBinaryContent(ofOther);
    }

    @Test
    void the_result_of_another_command_is_backed_up() throws IOException {
        Path book = SampleBook.in(folder);
        Path result = folder.resolve("result.xlsx");
        writer.write(book, SampleReport.build(), result);
        byte[] costs = Files.readAllBytes(result);
        Report whole = SampleReport.build();
        Report detail = new Report(whole.sheets().subList(1, whole.sheets().size()));

        assertThat(writer.write(book, detail, result).backup()).isNotNull().hasBinaryContent(costs);
        assertThat(writer.write(book, detail, result).backup()).isNull();
    }

    @Test
    void a_result_of_a_book_that_was_edited_since_needs_no_backup() throws IOException {
        Path book = SampleBook.in(folder);
        Path result = folder.resolve("result.xlsx");
        writer.write(book, SampleReport.build(), result);
        saveAgain(book, "Offers", 3, 7.5);

        assertThat(writer.write(book, SampleReport.build(), result).backup()).isNull();
    }

    @Test
    void one_changed_byte_of_a_result_is_a_reason_for_a_backup() throws IOException {
        Path book = SampleBook.in(folder);
        Path result = folder.resolve("result.xlsx");
        writer.write(book, SampleReport.build(), result);
        Path changed = folder.resolve("changed.xlsx");
        HandMadeBook copy = new HandMadeBook();
        Zips.contents(result).forEach((name, text) -> copy.part(name, text, ISO_8859_1));
        String sheet = copy.parts().keySet().stream()
                .filter(name -> name.contains("worksheets/"))
                .findFirst()
                .orElseThrow();
        Files.write(changed, copy.with(sheet, "</worksheet>", " </worksheet>").bytes());
        Files.move(changed, result, StandardCopyOption.REPLACE_EXISTING);

        assertThat(writer.write(book, SampleReport.build(), result).backup()).isNotNull();
    }

    @Test
    void names_of_any_length_are_backed_up_or_refused() throws IOException {
        Path book = SampleBook.in(folder);
        for (int length : List.of(230, 236, 245, 255)) {
            String name = "ä".repeat(10) + "x".repeat(length - 20 - ".xlsx".length()) + ".xlsx";
            Path named = Files.copy(book, folder.resolve(name));
            byte[] before = Files.readAllBytes(named);

            Written written = writer.writeInPlace(named, SampleReport.build(), TODAY);
            assertThat(written.backup()).isNotNull().hasBinaryContent(before);
            Written again = writer.writeInPlace(named, SampleReport.build(), TODAY);
            assertThat(again.backup()).isNotNull().isNotEqualTo(written.backup());
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_result_with_too_long_a_name_is_refused_with_what_to_do() throws IOException {
        Path book = SampleBook.in(folder);
        Path result = folder.resolve("x".repeat(252) + ".xlsx");

        assertThatThrownBy(() -> writer.write(book, SampleReport.build(), result))
                .isInstanceOf(UnwritableFileException.class)
                .hasMessage(result + " cannot be written because its name is too long."
                        + " Give the result a shorter name with -o.");
        assertThat(files()).containsExactly(book);
    }

    @Test
    void drafts_of_dead_runs_are_deleted_and_others_stay() throws IOException {
        Path book = SampleBook.in(folder);
        Path dead = draft("99999999-abc", Duration.ofHours(2));
        Path withoutProcess = draft("1x2y3z", Duration.ofDays(3));
        Path fresh = draft("99999999-def", Duration.ofMinutes(5));
        Path running = draft(ProcessHandle.current().pid() + "-ghi", Duration.ofHours(5));

        writer.writeInPlace(book, SampleReport.build(), TODAY);

        assertThat(dead).doesNotExist();
        assertThat(withoutProcess).doesNotExist();
        assertThat(fresh).exists();
        assertThat(running).exists();
    }

    private Path draft(String name, Duration age) throws IOException {
        Path draft = Files.writeString(folder.resolve(".perkilo-" + name + ".tmp"), "half");
        return Files.setLastModifiedTime(draft, FileTime.from(Instant.now().minus(age)));
    }

    @Test
    void cells_with_a_style_number_without_an_entry_keep_no_look() throws IOException {
        Path book = Files.write(
                folder.resolve("dangling.xlsx"), SampleBooks.danglingStyles().bytes());
        Path result = folder.resolve("result.xlsx");

        writer.write(book, SampleReport.build(), result);

        try (XSSFWorkbook opened = new XSSFWorkbook(Files.newInputStream(result))) {
            var styles = opened.getStylesSource();
            for (int number = 1; number <= 7; number++) {
                var look = styles.getStyleAt(number);
                assertThat(look.getFontIndex()).as("style " + number).isZero();
                assertThat(look.getDataFormat()).as("style " + number).isZero();
                assertThat(look.getFillPattern().name()).as("style " + number).isEqualTo("NO_FILL");
            }
            for (int number = 0; number <= 3; number++) {
                assertThat(styles.getDxfAt(number).xmlText())
                        .as("condition " + number)
                        .doesNotContain("<fill", "<font");
            }
            assertThat(opened.getSheet("Cost detail")
                            .getRow(0)
                            .getCell(0)
                            .getCellStyle()
                            .getIndex())
                    .isGreaterThan((short) 7);
        }
    }

    @Test
    void a_module_of_an_old_program_is_carried_along() throws IOException {
        Path book = Files.write(
                folder.resolve("module.xlsx"), SampleBooks.oldModule().bytes());
        assertThat(Grids.ofBook(book).findings()).isEmpty();
        Path result = folder.resolve("result.xlsx");

        writer.write(book, SampleReport.build(), result);

        assertThat(Zips.text(result, "xl/workbook.xml"))
                .contains("<sheet name=\"Module1\" sheetId=\"2\" state=\"veryHidden\" r:id=\"\"/>");
        assertThat(Grids.ofBook(result).sheets())
                .extracting(grid -> grid.sheet())
                .containsExactly("Offers");
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    private static void saveAgain(Path book, String sheet, int column, double price) throws IOException {
        byte[] bytes;
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(book));
                var out = new ByteArrayOutputStream()) {
            Row row = workbook.getSheet(sheet).getRow(1);
            Cell cell = row.getCell(column);
            cell.setCellValue(price);
            workbook.write(out);
            bytes = out.toByteArray();
        }
        Files.write(book, bytes);
    }
}
