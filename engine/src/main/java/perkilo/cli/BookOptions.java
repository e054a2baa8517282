package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.orderplan.Horizon;
import perkilo.orderplan.LeadTimes;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.reading.BookReader;
import perkilo.reading.Sources;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What every command on one workbook takes. */
final class BookOptions {

    private final PositionalParamSpec book =
            Options.parameter(0, "1", Path.class, "BOOK", "The workbook, .xlsx or .xlsm.");
    private final SourceOptions sources;
    private final PrintOptions printing;

    BookOptions(Command command) {
        command.takes(book);
        this.sources = new SourceOptions(command);
        this.printing = new PrintOptions(command);
    }

    /** The workbook. */
    Path book() {
        Path said = Options.said(book, Path.class);
        if (said == null) {
            throw new IllegalStateException("picocli asks for the workbook");
        }
        return said;
    }

    /** Reads the workbook with its price lists and rates; without a costing date today's holds. */
    Reading<Book> read() throws IOException {
        Sources all = new Sources(book(), sources.prices(), sources.rates(), sources.date());
        return new BookReader().read(all, LocalDate.now(ZoneId.systemDefault()));
    }

    /** Reads the same, with what keeps its demand from being planned, or makes the plan doubtful, where it has any. */
    Reading<Book> readWithDemand() throws IOException {
        Reading<Book> reading = read();
        if (reading.value().demand().isEmpty()) {
            return reading;
        }
        List<Finding> all = new ArrayList<>(reading.findings());
        all.addAll(Horizon.problems(reading.value()));
        all.addAll(LeadTimes.unknown(reading.value()));
        return new Reading<>(reading.value(), all);
    }

    /** Something about the workbook as a whole that keeps a command from an answer. */
    Finding complaint(String text) {
        return Finding.error(new Origin(String.valueOf(book().getFileName()), "", ""), text);
    }

    /** Whether the answer is printed as JSON. */
    boolean json() {
        return printing.json();
    }

    /** Whether only what matters is printed. */
    boolean quiet() {
        return printing.quiet();
    }
}
