package perkilo.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import perkilo.costing.RunCheck;
import perkilo.json.Json;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.origin.Reading;
import perkilo.swaps.FunctionCheck;
import perkilo.swaps.RecipeCheck;

/** Reads everything and lists every problem with its cell. */
final class CheckCommand extends Command {

    private final BookOptions options;

    CheckCommand() {
        super("check", "Read a workbook and list every problem with its cell; nothing is changed.");
        options = new BookOptions(this);
    }

    @Override
    public Integer call() throws IOException {
        Reading<Book> reading = options.readWithDemand();
        Book book = reading.value();
        List<Finding> findings = new ArrayList<>(reading.findings());
        findings.addAll(RunCheck.of(book));
        findings.addAll(RecipeCheck.of(book));
        findings.addAll(FunctionCheck.of(book));
        Console console = new Console(this, options);
        if (options.json()) {
            console.json(Json.onlyMessages(findings));
        }
        console.findings(findings);
        console.say("%s, %s, %s of %s, %s, %s"
                .formatted(
                        Console.counted(book.formulas().size(), "formula"),
                        Console.counted(book.materials().size(), "material"),
                        Console.counted(book.offers().size(), "offer"),
                        Console.counted(book.suppliers().size(), "supplier"),
                        Console.counted(book.products().size(), "product"),
                        Console.counted(book.runs().size(), "run")));
        console.say("%s, %s"
                .formatted(
                        Console.counted(count(findings, Level.ERROR), "error"),
                        Console.counted(count(findings, Level.WARNING), "warning")));
        return findings.stream().anyMatch(Finding::isError) ? Exit.BAD_INPUT : Exit.DONE;
    }

    private static long count(List<Finding> findings, Level level) {
        return findings.stream().filter(finding -> finding.level() == level).count();
    }
}
