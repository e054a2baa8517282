package perkilo.review;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.sheet.Report;
import perkilo.xlsx.author.Links;
import perkilo.xlsx.author.ResultPackage;
import perkilo.xlsx.write.SavedFile;

/** A review as a workbook of its own. */
public final class ReviewFile {

    private ReviewFile() {}

    /**
     * Writes a review over an earlier one, whose answers were read.
     *
     * @throws perkilo.xlsx.write.UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public static void write(Path file, Report review) throws IOException {
        Map<String, String> names = new LinkedHashMap<>();
        review.sheets().forEach(sheet -> names.put(sheet.name(), sheet.name()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new ResultPackage(review, new Links("", List.of(), names)).writeTo(bytes);
        SavedFile.write(file, bytes.toByteArray());
    }
}
