package perkilo.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.desk.Checked;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.StockLot;
import perkilo.origin.Counted;
import perkilo.origin.Level;
import perkilo.origin.Origin;

/** The contents and the problems of a workbook, for the terminal. */
final class CheckWords {

    private CheckWords() {}

    /** All findings, then what the book holds, then how many errors and warnings there are. */
    static void say(Console console, Checked checked) {
        Book book = checked.book();
        console.findings(checked.findings());
        ReadingWords.of(checked.reading().account()).forEach(console::say);
        console.say(Counted.of(book.formulas().size(), "formula") + ", "
                + Counted.of(book.materials().size(), "material") + ", "
                + Counted.of(book.offers().size(), "offer") + " of "
                + Counted.of(book.suppliers().size(), "supplier") + ", "
                + Counted.of(book.products().size(), "product") + ", "
                + Counted.of(book.runs().size(), "run"));
        toPlan(book).ifPresent(console::say);
        console.say(Counted.of(checked.count(Level.ERROR), "error") + ", "
                + Counted.of(checked.count(Level.WARNING), "warning"));
    }

    /** The rows that orders are planned from, with their sheets; empty where there are none. */
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
                : Optional.of(Counted.of(rows.size(), "row") + " of " + what + " (" + sheets + ")");
    }
}
