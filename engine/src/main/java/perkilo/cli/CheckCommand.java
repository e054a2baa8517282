package perkilo.cli;

import java.io.IOException;
import java.util.List;
import perkilo.json.Json;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.origin.Reading;

/** Reads everything and lists every problem with its cell. */
final class CheckCommand extends Command {

    private final BookOptions options;

    CheckCommand() {
        super("check", "Read a workbook and list every problem with its cell; nothing is changed.");
        options = new BookOptions(this);
    }

    @Override
    public Integer call() throws IOException {
        Reading<Book> reading = options.read();
        Console console = new Console(this, options);
        if (options.json()) {
            console.json(Json.onlyMessages(reading.findings()));
        }
        console.findings(reading.findings());
        Book book = reading.value();
        console.say("%d formulas, %d materials, %d offers of %d suppliers, %d products, %d runs"
                .formatted(
                        book.formulas().size(),
                        book.materials().size(),
                        book.offers().size(),
                        book.suppliers().size(),
                        book.products().size(),
                        book.runs().size()));
        console.say("%d errors, %d warnings"
                .formatted(count(reading.findings(), Level.ERROR), count(reading.findings(), Level.WARNING)));
        return reading.hasErrors() ? Exit.BAD_INPUT : Exit.DONE;
    }

    private static long count(List<Finding> findings, Level level) {
        return findings.stream().filter(finding -> finding.level() == level).count();
    }
}
