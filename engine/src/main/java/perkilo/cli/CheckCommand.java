package perkilo.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.costing.RunCheck;
import perkilo.json.Json;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.StockLot;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.origin.Origin;
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
        toPlan(book).ifPresent(console::say);
        console.say("%s, %s"
                .formatted(
                        Console.counted(count(findings, Level.ERROR), "error"),
                        Console.counted(count(findings, Level.WARNING), "warning")));
        return findings.stream().anyMatch(Finding::isError) ? Exit.BAD_INPUT : Exit.DONE;
    }

    /** What orders are planned for, and from which sheets; empty where there is nothing. */
    private static Optional<String> toPlan(Book book) {
        List<Origin> demand = book.demand().stream().map(Demand::origin).toList();
        List<Origin> shelf = book.stock().stream()
                .filter(lot -> !lot.isOnOrder())
                .map(StockLot::origin)
                .toList();
        List<Origin> onOrder = book.stock().stream()
                .filter(StockLot::isOnOrder)
                .map(StockLot::origin)
                .toList();
        List<String> parts = new ArrayList<>();
        rows(demand, "demand").ifPresent(parts::add);
        rows(shelf, "stock").ifPresent(parts::add);
        rows(onOrder, "goods on order").ifPresent(parts::add);
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", parts));
    }

    private static Optional<String> rows(List<Origin> rows, String what) {
        String sheets = rows.stream().map(Origin::sheet).distinct().collect(Collectors.joining(" and "));
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of("%s of %s (%s)".formatted(Console.counted(rows.size(), "row"), what, sheets));
    }

    private static long count(List<Finding> findings, Level level) {
        return findings.stream().filter(finding -> finding.level() == level).count();
    }
}
