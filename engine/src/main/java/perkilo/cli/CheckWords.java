package perkilo.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.desk.Checked;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.StockLot;
import perkilo.origin.Level;
import perkilo.origin.Origin;

/** What is in a workbook and what is wrong with it, for the terminal. */
final class CheckWords {

    private CheckWords() {}

    /** All findings, then what the book holds, then how many errors and warnings there are. */
    static void say(Console console, Checked checked) {
        Book book = checked.book();
        console.findings(checked.findings());
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
                        Console.counted(checked.count(Level.ERROR), "error"),
                        Console.counted(checked.count(Level.WARNING), "warning")));
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
}
