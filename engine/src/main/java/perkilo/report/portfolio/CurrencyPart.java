package perkilo.report.portfolio;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** The books of one home currency: their totals, all their runs, and the products with charts. */
final class CurrencyPart {

    private static final List<String> RUN_HEADS = List.of(
            "Book",
            "Product",
            "Units",
            "Bulk per kg",
            "Unit cost",
            "Cash per unit",
            "Whole run",
            "Outlay for items",
            "Stock left",
            "Left of outlay",
            "Purchase");

    private final SheetBuilder sheet;
    private final String home;
    private final List<PortfolioBook> books;
    private final PortfolioMessages messages;
    private final NumberFormat money;
    private Expr outlay = Expr.of(0);
    private Expr stockLeft = Expr.of(0);

    CurrencyPart(SheetBuilder sheet, String home, List<PortfolioBook> books, PortfolioMessages messages) {
        this.sheet = sheet;
        this.home = home;
        this.books = books;
        this.messages = messages;
        this.money = NumberFormat.money(home, 2);
    }

    /** Writes the part from a row on; the first row after it. */
    int write(int row) {
        int runs = row + books.size() + 4;
        Map<PortfolioBook, Integer> firstRows = new LinkedHashMap<>();
        int next = runTable(runs, firstRows);
        bookTable(row, firstRows);
        return new ProductsPart(sheet, home, books).write(next + 1);
    }

    /** Says what all runs take, once the totals are there. */
    void sentence(int row) {
        sheet.sentence(
                row,
                0,
                Look.ANSWER,
                new ResultSheet.Words(
                        hasAlternatives()
                                ? "If every run were made, all sizes of a product, items would take "
                                : "All runs together take "),
                new ResultSheet.Fixed(outlay, 0),
                new ResultSheet.Words(" " + home + (hasAlternatives() ? "; " : " for items; ")),
                new ResultSheet.Fixed(stockLeft, 0),
                new ResultSheet.Words(" " + home + " of that stays in stock"));
    }

    /** Whether a book makes something in several sizes: its runs stand for one another, and their sum is no budget. */
    private boolean hasAlternatives() {
        for (PortfolioBook book : books) {
            List<String> products = requireNonNull(book.costs()).runs().stream()
                    .map(PortfolioRun::product)
                    .toList();
            if (Set.copyOf(products).size() < products.size()) {
                return true;
            }
        }
        return false;
    }

    private void bookTable(int row, Map<PortfolioBook, Integer> firstRows) {
        heads(
                row,
                List.of(
                        "Book",
                        "Problems",
                        "Runs",
                        "Costing date",
                        "Outlay for items",
                        "Stock left",
                        "Left of outlay"));
        int next = row + 1;
        for (PortfolioBook book : books) {
            PortfolioBook.Costs costs = requireNonNull(book.costs());
            name(next, book);
            sheet.text(next, 1, book.problems(), look(book), messages.first(book));
            sheet.value(next, 2, Expr.of(costs.runs().size()), NumberFormat.WHOLE, Look.PLAIN);
            sheet.text(next, 3, costs.costingDate().toString(), Look.PLAIN);
            int first = requireNonNull(firstRows.get(book));
            int last = first + costs.runs().size() - 1;
            Expr paid = sheet.value(next, 4, sheet.sumOfColumn(7, first, last), money, Look.PLAIN);
            Expr left = sheet.value(next, 5, sheet.sumOfColumn(8, first, last), money, Look.PLAIN);
            share(next, 6, left, paid, Look.PLAIN);
            next++;
        }
        sheet.text(next, 0, "All books", Look.TOTAL);
        sheet.value(next, 2, sheet.sumOfColumn(2, row + 1, next - 1), NumberFormat.WHOLE, Look.TOTAL);
        outlay = sheet.value(next, 4, sheet.sumOfColumn(4, row + 1, next - 1), money, Look.TOTAL);
        stockLeft = sheet.value(next, 5, sheet.sumOfColumn(5, row + 1, next - 1), money, Look.TOTAL);
        share(next, 6, stockLeft, outlay, Look.TOTAL);
    }

    private int runTable(int row, Map<PortfolioBook, Integer> firstRows) {
        sheet.text(row - 1, 0, "All runs, in " + home, Look.SECTION);
        heads(row, RUN_HEADS);
        int next = row + 1;
        for (PortfolioBook book : books) {
            firstRows.put(book, next);
            for (PortfolioRun run : requireNonNull(book.costs()).runs()) {
                name(next, book);
                run(next++, run);
            }
        }
        return next;
    }

    private void run(int row, PortfolioRun run) {
        sheet.text(row, 1, run.units() == null ? run.title() : run.product(), Look.LABEL);
        if (run.units() != null && run.unitCost() != null && run.cashPerUnit() != null) {
            Expr units = sheet.value(row, 2, Expr.of(run.units()), NumberFormat.WHOLE, Look.PLAIN);
            Expr unit = sheet.value(row, 4, Expr.of(run.unitCost()), money, Look.KEY);
            sheet.value(row, 5, Expr.of(run.cashPerUnit()), money, Look.PLAIN);
            sheet.value(row, 6, units.times(unit), money, Look.PLAIN);
        }
        sheet.value(row, 3, Expr.of(run.bulkPerKg()), money, Look.PLAIN);
        Expr paid = sheet.value(row, 7, Expr.of(run.outlay()), money, Look.PLAIN);
        Expr left = sheet.value(row, 8, Expr.of(run.stockLeft()), money, Look.PLAIN);
        share(row, 9, left, paid, Look.PLAIN);
        sheet.text(row, 10, run.proven() ? "proven cheapest" : "not proven cheapest", Look.HINT);
    }

    private void share(int row, int column, Expr part, Expr whole, Look look) {
        if (whole.value().signum() != 0) {
            sheet.value(row, column, part.over(whole), NumberFormat.PERCENT, look);
        }
    }

    private void name(int row, PortfolioBook book) {
        Origin result = book.result();
        if (result == null) {
            sheet.fileName(row, 0, book.name(), Look.LABEL, book.address());
        } else {
            sheet.text(row, 0, book.name(), Look.LABEL, result);
        }
    }

    private static Look look(PortfolioBook book) {
        return book.problems().equals("–") ? Look.PLAIN : Look.WARNING;
    }

    private void heads(int row, List<String> heads) {
        for (int column = 0; column < heads.size(); column++) {
            sheet.text(row, column, heads.get(column), Look.HEADER);
        }
    }
}
