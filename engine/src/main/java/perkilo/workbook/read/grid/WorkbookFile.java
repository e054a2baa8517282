package perkilo.workbook.read.grid;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Opens XLSX and XLSM workbooks, from memory alone: the person's file is never opened for writing. */
final class WorkbookFile {

    private static final String SAVE_AGAIN = "open it in your spreadsheet program and save it again";
    private static final String SAVE_AS = "open it in your spreadsheet program and save it as .xlsx";

    private WorkbookFile() {}

    /**
     * The sheets of a workbook.
     *
     * @param ofBook whether formulas in the results can refer to its cells
     * @throws UnreadableFileException if it cannot be opened
     */
    static Grids read(Path file, byte[] content, boolean ofBook) throws IOException {
        refuseOtherPackages(file);
        try (OPCPackage opened = OPCPackage.open(new ByteArrayInputStream(content));
                XSSFWorkbook book = new XSSFWorkbook(opened)) {
            return new WorkbookSheets(String.valueOf(file.getFileName()), book, ofBook).read();
        } catch (InvalidFormatException | RuntimeException | StackOverflowError e) {
            throw new UnreadableFileException(file, reason(e), e);
        } catch (IOException e) {
            throw new UnreadableFileException(file, reason(e), e);
        }
    }

    private static void refuseOtherPackages(Path file) throws IOException {
        Set<String> parts = new HashSet<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            zip.stream().map(ZipEntry::getName).forEach(parts::add);
        } catch (ZipException e) {
            throw new UnreadableFileException(
                    file, "is damaged or was cut short on its way; take a fresh copy of it", e);
        }
        if (parts.contains("xl/workbook.xml")) {
            return;
        }
        throw new UnreadableFileException(file, whatElse(parts));
    }

    private static String whatElse(Set<String> parts) {
        if (parts.contains("xl/workbook.bin")) {
            return "is a binary workbook (.xlsb); " + SAVE_AS;
        }
        if (parts.contains("content.xml") && parts.contains("mimetype")) {
            return "is an OpenDocument file (.ods); " + SAVE_AS;
        }
        if (parts.stream().anyMatch(part -> part.startsWith("word/"))) {
            return "is a Word document, not a workbook; bring the tables into a spreadsheet and save it as .xlsx";
        }
        if (parts.stream().anyMatch(part -> part.endsWith(".iwa"))) {
            return "is a Numbers document; export it as an Excel workbook (.xlsx)";
        }
        return "is a ZIP archive, not a workbook; unpack it and name the workbook in it";
    }

    private static String reason(Throwable e) {
        StringBuilder all = new StringBuilder();
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            all.append(cause.getMessage()).append('\n');
        }
        String said = all.toString().toLowerCase(Locale.ROOT);
        if (said.contains("zip bomb")) {
            return "unpacks to far more than its size, as no real workbook does; " + SAVE_AGAIN;
        }
        if (said.contains("doctype")) {
            return "holds a DOCTYPE declaration, as no spreadsheet program writes; " + SAVE_AGAIN;
        }
        if (said.contains("strict ooxml")) {
            return "is saved as a Strict Open XML workbook; save it as an ordinary Excel workbook (.xlsx)";
        }
        return "is damaged and cannot be opened as a workbook; " + SAVE_AGAIN;
    }
}
