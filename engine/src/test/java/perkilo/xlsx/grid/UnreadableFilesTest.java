package perkilo.xlsx.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.origin.Finding;

/** Files that cannot be read: each message says what the file is and what to do. */
final class UnreadableFilesTest {

    private static final String SAVE_AS = ". Open it in your spreadsheet program and save it as .xlsx.";

    @TempDir
    Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Supplier,Item,A,B|is a text file (CSV), not a workbook. Open it in your spreadsheet program and save it as .xlsx.",
                "''|is empty. Use a copy that has content.",
                "<html><body><table>|is a web page (HTML), not a workbook. Open it in your spreadsheet program and save it as .xlsx.",
                "<?xml version='1.0'?><x/>|is an XML file, not a workbook. Open it in your spreadsheet program and save it as .xlsx.",
                "{\"offers\": []}|is a JSON file, not a workbook. Open it in your spreadsheet program and save it as .xlsx.",
                "%PDF-1.7|is a PDF, not a workbook. Ask for the figures as a spreadsheet."
            })
    void what_is_no_workbook(String content, String expected) throws IOException {
        refused(content.getBytes(StandardCharsets.UTF_8), expected);
    }

    @Test
    void old_and_encrypted_workbooks() throws IOException {
        ByteArrayOutputStream old = new ByteArrayOutputStream();
        try (HSSFWorkbook book = new HSSFWorkbook()) {
            book.createSheet("Offers");
            book.write(old);
        }
        refused(old.toByteArray(), "is a workbook in the old format (.xls)" + SAVE_AS);

        ByteArrayOutputStream encrypted = new ByteArrayOutputStream();
        try (POIFSFileSystem files = new POIFSFileSystem()) {
            files.createDocument(new ByteArrayInputStream(new byte[5000]), "EncryptedPackage");
            files.writeFilesystem(encrypted);
        }
        refused(
                encrypted.toByteArray(),
                "is protected by a password. Open it in your spreadsheet program and save it without a password.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "xl/workbook.bin|is a binary workbook (.xlsb). Open it in your spreadsheet program and save it as .xlsx.",
                "mimetype;content.xml|is an OpenDocument file (.ods). Open it in your spreadsheet program and save it as .xlsx.",
                "word/document.xml|is a Word document, not a workbook. Copy the tables into a spreadsheet and save it as .xlsx.",
                "Index/Document.iwa|is a Numbers document. Export it as an Excel workbook (.xlsx).",
                "a.csv|is a ZIP archive, not a workbook. Unpack it and name the workbook in it."
            })
    void other_packages(String parts, String expected) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (String part : parts.split(";", -1)) {
                zip.putNextEntry(new ZipEntry(part));
                zip.write('x');
            }
        }
        refused(bytes.toByteArray(), expected);
    }

    @Test
    void a_file_that_was_cut_short() throws IOException {
        byte[] whole = workbook();
        refused(Arrays.copyOf(whole, whole.length / 2), "is damaged or was not copied completely. Get a fresh copy.");
    }

    @Test
    void a_document_type_in_a_part() throws IOException {
        refused(
                changed("xl/workbook.xml", part -> part.replaceFirst("\\?>", "?><!DOCTYPE x [<!ENTITY a 'b'>]>")),
                "holds a DOCTYPE declaration, which no spreadsheet program writes. "
                        + "Open it in your spreadsheet program and save it again.");
    }

    @Test
    void a_part_that_unpacks_to_far_too_much() throws IOException {
        refused(
                changed("xl/worksheets/sheet1.xml", part -> part + " ".repeat(30_000_000)),
                "unpacks to far more than its size, which no real workbook does. "
                        + "Open it in your spreadsheet program and save it again.");
    }

    @Test
    void a_sheet_whose_part_is_missing_is_an_error_at_the_sheet() throws IOException {
        Path file = Files.write(folder.resolve("book.xlsx"), changed("xl/worksheets/sheet1.xml", part -> null));

        try {
            assertThat(Grids.ofBook(file).findings())
                    .extracting(Finding::toString)
                    .containsExactly("error Offers: The workbook is damaged: it lists this sheet but does not hold it. "
                            + "Get a fresh copy.");
        } catch (UnreadableFileException alsoFine) {
            assertThat(alsoFine).hasMessageContaining("is damaged");
        }
    }

    @Test
    void no_file_and_a_folder() {
        assertThatThrownBy(() -> Grids.ofBook(folder.resolve("none.xlsx")))
                .isInstanceOf(UnreadableFileException.class)
                .hasMessage(folder.resolve("none.xlsx") + " does not exist. Check the name and the folder.");
        assertThatThrownBy(() -> Grids.ofBook(folder)).hasMessage(folder + " is a folder. Name the file in it.");
    }

    @Test
    void broken_json_names_the_line() throws IOException {
        Path file = Files.writeString(folder.resolve("a.json"), "[\n{\"Supplier\": }\n]");

        assertThatThrownBy(() -> Grids.ofPriceFile(file))
                .isInstanceOf(UnreadableFileException.class)
                .hasMessageContaining("a.json cannot be read as JSON near line 2");
    }

    private void refused(byte[] content, String expected) throws IOException {
        Path file = Files.write(folder.resolve("book.xlsx"), content);
        assertThatThrownBy(() -> Grids.ofBook(file))
                .isInstanceOf(UnreadableFileException.class)
                .hasMessage(file + " " + expected);
    }

    private static byte[] workbook() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            book.createSheet("Offers").createRow(0).createCell(0).setCellValue("Supplier");
            book.write(bytes);
        }
        return bytes.toByteArray();
    }

    /** The workbook with one part changed, or left out if the change returns null. */
    private static byte[] changed(String part, UnaryOperator<@org.jspecify.annotations.Nullable String> change)
            throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(workbook()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), read(zip));
            }
        }
        String text = change.apply(new String(parts.getOrDefault(part, new byte[0]), StandardCharsets.UTF_8));
        if (text == null) {
            parts.remove(part);
        } else {
            parts.put(part, text.getBytes(StandardCharsets.UTF_8));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> entry : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] read(InputStream in) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        copy(in, out);
        return out.toByteArray();
    }

    private static void copy(InputStream in, OutputStream out) throws IOException {
        in.transferTo(out);
    }
}
