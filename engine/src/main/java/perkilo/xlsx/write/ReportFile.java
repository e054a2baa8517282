package perkilo.xlsx.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.sheet.Report;
import perkilo.xlsx.author.Links;
import perkilo.xlsx.author.ResultPackage;

/** A report as a workbook of its own, over an earlier one. */
public final class ReportFile {

    private ReportFile() {}

    /**
     * Writes a workbook over an earlier one, of which nothing is kept.
     *
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public static void write(Path file, Report report) throws IOException {
        Map<String, String> names = new LinkedHashMap<>();
        report.sheets().forEach(sheet -> names.put(sheet.name(), sheet.name()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new ResultPackage(report, new Links("", List.of(), names)).writeTo(bytes);
        SavedFile.write(file, bytes.toByteArray());
    }
}
