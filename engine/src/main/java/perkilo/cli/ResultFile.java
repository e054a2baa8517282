package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import perkilo.sheet.Report;
import perkilo.xlsx.write.WorkbookWriter;
import perkilo.xlsx.write.Written;

/** Writes a report where a command's options ask. */
final class ResultFile {

    /** What each command adds to a workbook's name. */
    static final String COSTED = "-costed";

    static final String ORDERED = "-ordered";
    static final String SWAPPED = "-swapped";

    private final Path book;
    private final Path target;
    private final OutputOptions output;

    /**
     * A file for results.
     *
     * @param suffix what the command adds to the workbook's name
     */
    ResultFile(Path book, OutputOptions output, String suffix) {
        this(book, output.target(book, suffix), output);
    }

    /** A file for results at a place of its own. */
    ResultFile(Path book, Path target, OutputOptions output) {
        this.book = book;
        this.target = target;
        this.output = output;
    }

    /**
     * Writes the report.
     *
     * @return what was written
     * @throws IOException whose message is a sentence for a person
     */
    Written write(Report report) throws IOException {
        WorkbookWriter writer = new WorkbookWriter();
        if (output.sheetOnly()) {
            return writer.writeAlone(report.alone(), target);
        }
        if (output.inPlace()) {
            return writer.writeInPlace(book, report, LocalDate.now(ZoneId.systemDefault()));
        }
        return writer.write(book, report, target);
    }
}
