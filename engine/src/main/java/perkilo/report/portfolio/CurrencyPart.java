package perkilo.report.portfolio;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** The books of one home currency: their totals, all their runs, and the products with charts. */
final class CurrencyPart {

    private final SheetBuilder sheet;
    private final String home;
    private final List<PortfolioBook> books;
    private final PortfolioMessages messages;
    private final IdentityHashMap<PortfolioBook, Integer> firstRuns = new IdentityHashMap<>();
    private final List<RunLine> lines = new ArrayList<>();
    private final Column<RunLine> paidForRun;
    private final Column<RunLine> leftOfRun;
    private final Column<PortfolioBook> paid;
    private final Column<PortfolioBook> left;
    private final Placed<RunLine> runs;
    private final Placed<PortfolioBook> totals;

    /**
     * The part, from a row on.
     *
     * @param row the first, from zero
     */
    CurrencyPart(SheetBuilder sheet, String home, List<PortfolioBook> books, PortfolioMessages messages, int row) {
        this.sheet = sheet;
        this.home = home;
        this.books = books;
        this.messages = messages;
        NumberFormat money = NumberFormat.money(home, 2);
        for (PortfolioBook book : books) {
            firstRuns.put(book, lines.size());
            for (PortfolioRun run : costs(book).runs()) {
                lines.add(new RunLine(book, run));
            }
        }
        paidForRun = PortfolioColumns.amount(
                "outlay", "Outlay for items", money, line -> line.run().outlay());
        leftOfRun = PortfolioColumns.amount(
                "stockLeft", "Stock left", money, line -> line.run().stockLeft());
        paid = Column.<PortfolioBook>of("outlay", "Outlay for items")
                .formula(book -> sumOfRuns(book, paidForRun()))
                .format(money)
                .sum();
        left = Column.<PortfolioBook>of("stockLeft", "Stock left")
                .formula(book -> sumOfRuns(book, leftOfRun()))
                .format(money)
                .sum();
        totals = bookTable().at(sheet, row, books);
        runs = runTable(money).at(sheet, totals.next() + 2, lines);
    }

    /** Writes the part; the first row after it. */
    int write() {
        sheet.section(totals.next() + 1, "All runs, in " + home);
        runs.write();
        totals.write();
        return new ProductsPart(sheet, home, books).write(runs.next() + 1);
    }

    /** Writes the payments for all runs. */
    void sentence(int row) {
        sheet.answer(
                row,
                Origin.NONE,
                List.of(
                        new ResultSheet.Words(
                                hasAlternatives()
                                        ? "If all runs were made, in all sizes, items would cost "
                                        : "All runs together need "),
                        new ResultSheet.Fixed(totals.total(paid), 0),
                        new ResultSheet.Words(" " + home + (hasAlternatives() ? "; " : " for items; ")),
                        new ResultSheet.Fixed(totals.total(left), 0),
                        new ResultSheet.Words(" " + home + " of that stays in stock")));
    }

    /** Whether a book has several sizes of a product: its runs are alternatives, and their sum is not a budget. */
    private boolean hasAlternatives() {
        for (PortfolioBook book : books) {
            List<String> products =
                    costs(book).runs().stream().map(PortfolioRun::product).toList();
            if (Set.copyOf(products).size() < products.size()) {
                return true;
            }
        }
        return false;
    }

    private Table<PortfolioBook> bookTable() {
        return Table.of(
                PortfolioColumns.<PortfolioBook>book(book -> book).totalWords("All books"),
                Column.<PortfolioBook>of("problems", "Problems")
                        .words(PortfolioBook::problems)
                        .look(book -> book.hasProblems() ? Look.WARNING : Look.PLAIN)
                        .link(messages::first),
                Column.<PortfolioBook>of("runs", "Runs")
                        .value(book -> BigDecimal.valueOf(costs(book).runs().size()))
                        .format(NumberFormat.WHOLE)
                        .sum(),
                Column.<PortfolioBook>of("costingDate", "Costing date")
                        .words(book -> costs(book).costingDate().toString()),
                paid,
                left,
                PortfolioColumns.share(left, paid)
                        .total(table -> PortfolioColumns.ratio(table.total(left), table.total(paid))));
    }

    private Table<RunLine> runTable(NumberFormat money) {
        Column<RunLine> units = Column.<RunLine>of("units", "Units")
                .value(line -> isFilled(line) ? line.run().units() : null)
                .format(NumberFormat.WHOLE);
        Column<RunLine> unitCost = PortfolioColumns.<RunLine>amount(
                        "unitCost",
                        "Unit cost",
                        money,
                        line -> isFilled(line) ? line.run().unitCost() : null)
                .look(Look.KEY);
        return Table.of(
                PortfolioColumns.book(RunLine::book),
                Column.<RunLine>of("product", "Product")
                        .words(line -> line.run().units() == null
                                ? line.run().title()
                                : line.run().product())
                        .look(Look.LABEL),
                units,
                PortfolioColumns.amount(
                        "bulkPerKg", "Bulk per kg", money, line -> line.run().bulkPerKg()),
                unitCost,
                PortfolioColumns.amount(
                        "cashPerUnit",
                        "Cash per unit",
                        money,
                        line -> isFilled(line) ? line.run().cashPerUnit() : null),
                Column.<RunLine>of("wholeRun", "Whole run")
                        .formula(row -> isFilled(row.entry()) ? row.ref(units).times(row.ref(unitCost)) : null)
                        .format(money),
                paidForRun,
                leftOfRun,
                PortfolioColumns.share(leftOfRun, paidForRun),
                Column.<RunLine>of("purchase", "Purchase")
                        .words(line -> line.run().proven() ? "proven cheapest" : "not proven cheapest")
                        .look(Look.HINT));
    }

    private static boolean isFilled(RunLine line) {
        PortfolioRun run = line.run();
        return run.units() != null && run.unitCost() != null && run.cashPerUnit() != null;
    }

    private @Nullable Expr sumOfRuns(Row<PortfolioBook> row, Column<RunLine> column) {
        int first = requireNonNull(firstRuns.get(row.entry()));
        return runs.sum(column, first, first + costs(row.entry()).runs().size() - 1);
    }

    private Column<RunLine> paidForRun() {
        return paidForRun;
    }

    private Column<RunLine> leftOfRun() {
        return leftOfRun;
    }

    private static PortfolioBook.Costs costs(PortfolioBook book) {
        return requireNonNull(book.costs());
    }
}
