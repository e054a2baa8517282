package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import perkilo.report.Report;
import perkilo.workbook.write.WorkbookWriter;
import perkilo.workbook.write.Written;

/** Writes a report where a command's options ask. */
final class ResultFile {

    private final BookOptions options;
    private final OutputOptions output;
    private final String suffix;

    /**
     * A file for results.
     *
     * @param suffix what the command adds to the workbook's name, such as {@code -costed}
     */
    ResultFile(BookOptions options, OutputOptions output, String suffix) {
        this.options = options;
        this.output = output;
        this.suffix = suffix;
    }

    /**
     * Writes the report.
     *
     * @return what was written
     * @throws IOException whose message is a sentence for a person
     */
    Written write(Report report) throws IOException {
        WorkbookWriter writer = new WorkbookWriter();
        Path target = output.target(options.book(), suffix);
        if (output.sheetOnly()) {
            return writer.writeAlone(report.alone(), target);
        }
        if (output.inPlace()) {
            return writer.writeInPlace(options.book(), report, LocalDate.now(ZoneId.systemDefault()));
        }
        return writer.write(options.book(), report, target);
    }
}
