package perkilo.report.portfolio;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import perkilo.costing.RunAnswer;
import perkilo.origin.Counted;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** Portfolio: the answer in a sentence, the books, and for each home currency its runs, its products and charts. */
final class PortfolioSheet {

    private final List<PortfolioBook> books;
    private final PortfolioMessages messages;
    private final SheetBuilder sheet = new SheetBuilder("Portfolio");

    PortfolioSheet(List<PortfolioBook> books, PortfolioMessages messages) {
        this.books = books;
        this.messages = messages;
    }

    ResultSheet write() {
        sheet.widths(34, 30, 15, 15, 16, 15, 15, 16, 15, 15, 18).landscape();
        sheet.title(0, "Portfolio");
        sheet.hint(
                1,
                "Each run is costed as if it were the only one, with its own purchases. Runs of one product are usually"
                        + " alternatives. Click a book's name to open its result.");
        sheet.answer(3, answer());
        Map<String, List<PortfolioBook>> byCurrency = byCurrency();
        int next = 4 + byCurrency.size();
        int sentence = 4;
        next = incomplete(failed(next + 1));
        for (Map.Entry<String, List<PortfolioBook>> one : byCurrency.entrySet()) {
            CurrencyPart part = new CurrencyPart(sheet, one.getKey(), one.getValue(), messages, next);
            next = part.write();
            part.sentence(sentence++);
        }
        return sheet.build();
    }

    private String answer() {
        long costed = books.stream().filter(book -> book.costs() != null).count();
        int runs = books.stream()
                .map(PortfolioBook::costs)
                .mapToInt(costs -> costs == null ? 0 : costs.runs().size())
                .sum();
        String bad = costed == books.size() ? "" : ", %d not costed".formatted(books.size() - costed);
        long open = incomplete().size();
        String left =
                open == 0 ? "" : ", %s not complete and left out of all totals".formatted(Counted.of(open, "run"));
        String sign = open == 0 ? "" : Sign.ATTENTION + " ";
        return "%s%s, %s%s%s"
                .formatted(sign, Counted.of(books.size(), "book"), Counted.of(runs + open, "run"), bad, left);
    }

    private Map<String, List<PortfolioBook>> byCurrency() {
        Map<String, List<PortfolioBook>> all = new LinkedHashMap<>();
        for (PortfolioBook book : books) {
            PortfolioBook.Costs costs = book.costs();
            if (costs != null && !costs.runs().isEmpty()) {
                all.merge(costs.home(), List.of(book), PortfolioSheet::joined);
            }
        }
        return all;
    }

    private static List<PortfolioBook> joined(List<PortfolioBook> some, List<PortfolioBook> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    /** A run that is not complete, with its book. */
    private record Open(PortfolioBook book, RunAnswer run) {}

    private List<Open> incomplete() {
        List<Open> all = new ArrayList<>();
        for (PortfolioBook book : books) {
            PortfolioBook.Costs costs = book.costs();
            if (costs != null) {
                costs.incomplete().forEach(run -> all.add(new Open(book, run)));
            }
        }
        return all;
    }

    /** The runs that are not complete, which no total counts. */
    private int incomplete(int row) {
        List<Open> open = incomplete();
        if (open.isEmpty()) {
            return row;
        }
        sheet.section(row, "Not complete, and left out of all totals");
        return Table.of(
                                PortfolioColumns.<Open>book(Open::book),
                                Column.<Open>of("run", "Run")
                                        .words(one -> one.run().title()),
                                Column.<Open>of("missing", "Missing")
                                        .words(one -> Sign.ATTENTION + " "
                                                + String.join(", ", one.run().missingNames()))
                                        .look(Look.ERROR))
                        .at(sheet, row + 1, open)
                        .write()
                        .next()
                + 1;
    }

    /** The books that could not be costed. */
    private int failed(int row) {
        List<PortfolioBook> failed =
                books.stream().filter(book -> book.costs() == null).toList();
        if (failed.isEmpty()) {
            return row;
        }
        sheet.section(row, "Not costed");
        return Table.of(
                                PortfolioColumns.<PortfolioBook>book(book -> book),
                                Column.<PortfolioBook>of("problems", "Problems")
                                        .words(PortfolioBook::problems)
                                        .look(Look.ERROR)
                                        .link(messages::first))
                        .at(sheet, row + 1, failed)
                        .write()
                        .next()
                + 1;
    }
}
