package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import perkilo.reading.Sources;

/** Workbooks to work on. */
final class Templates {

    /** The day that the templates are made for. */
    static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    private Templates() {}

    /** A new workbook from a template. */
    static Path book(Path folder, Template template) throws IOException {
        return new StartBook().start(template, folder.resolve(template.word() + ".xlsx"));
    }

    /** A workbook alone, costed on the day. */
    static Sources alone(Path book) {
        return new Sources(book, List.of(), null, DAY);
    }
}
