package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.workbook.read.BookReader;
import perkilo.workbook.read.Sources;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command on a workbook takes. */
final class BookOptions {

    @Parameters(paramLabel = "BOOK", description = "The workbook, .xlsx or .xlsm.")
    private @Nullable Path book;

    @Option(
            names = "--prices",
            paramLabel = "PATH",
            description =
                    "A price list, or a folder of them; adds to the workbook's own offers. May be given several times.")
    private List<Path> prices = List.of();

    @Option(names = "--rates", paramLabel = "FILE", description = "Exchange rates: a dated table.")
    private @Nullable Path rates;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "The costing date, in place of the one in the workbook.")
    private @Nullable LocalDate date;

    @Option(names = "--json", description = "Print the answer as JSON, and nothing else, on standard output.")
    private boolean json;

    @Option(
            names = {"-q", "--quiet"},
            description = "Print no table and no notes; warnings and errors stay.")
    private boolean quiet;

    /** The workbook. */
    Path book() {
        if (book == null) {
            throw new IllegalStateException("picocli asks for the workbook");
        }
        return book;
    }

    /** Reads the workbook with its price lists and rates; without a costing date today's holds. */
    Reading<Book> read() throws IOException {
        return new BookReader().read(new Sources(book(), prices, rates, date), LocalDate.now(ZoneId.systemDefault()));
    }

    /** Something about the workbook as a whole that keeps a command from an answer. */
    Finding complaint(String text) {
        return Finding.error(new Origin(String.valueOf(book().getFileName()), "", ""), text);
    }

    /** Whether the answer is printed as JSON. */
    boolean json() {
        return json;
    }

    /** Whether only what matters is printed. */
    boolean quiet() {
        return quiet;
    }
}
