package perkilo.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.origin.Account;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.reading.arrange.Arrangement;
import perkilo.reading.arrange.Arranger;
import perkilo.reading.arrange.PlanLosses;
import perkilo.reading.table.AccountWriter;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.SeenTables;
import perkilo.reading.table.SheetProposals;
import perkilo.reading.table.TableFinder;
import perkilo.schema.Schemas;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** Reads a workbook, with its price lists and rates, into a {@link Book}. */
public final class BookReader {

    private static final int NAMED_SHEETS = 8;

    /**
     * Reads everything and reports everything that is wrong with it.
     *
     * @param sources what is read together
     * @param today the costing date if none is set
     * @return the book without what depends on an error, which it names as its gaps, and all findings in the order of
     *     the files
     * @throws perkilo.xlsx.grid.UnreadableFileException if a file cannot be opened; its message says why
     */
    public Reading<Book> read(Sources sources, LocalDate today) throws IOException {
        return read(sources, PricesRead.ALL, today);
    }

    /**
     * Reads everything, but perhaps only some rows of price lists.
     *
     * @param sources what is read together
     * @param prices which prices of price lists are read
     * @param today the costing date if none is set
     * @throws perkilo.xlsx.grid.UnreadableFileException if a file cannot be opened; its message says why
     */
    public Reading<Book> read(Sources sources, PricesRead prices, LocalDate today) throws IOException {
        SharedSources shared = SharedSources.read(sources.priceFiles(), sources.rates());
        return read(sources.book(), shared, prices, sources.costingDate(), today, new ArrayList<>());
    }

    /**
     * Reads one of several books that share price lists and rates.
     *
     * @param file the person's workbook
     * @param shared what was read before
     * @param prices which prices of price lists are read
     * @param costingDate replaces the workbook's own; null to use that
     * @param today the costing date where none is set
     * @return the book without what depends on an error, which it names as its gaps, and all findings in the order of
     *     the files
     * @throws perkilo.xlsx.grid.UnreadableFileException if the file cannot be opened; its message says why
     */
    public Reading<Book> read(
            Path file, SharedSources shared, PricesRead prices, @Nullable LocalDate costingDate, LocalDate today)
            throws IOException {
        return read(file, shared, prices, costingDate, today, new ArrayList<>());
    }

    /**
     * What a workbook leaves open once it is read with its price lists: questions for the sheet Reading.
     *
     * @throws perkilo.xlsx.grid.UnreadableFileException if a file cannot be opened; its message says why
     */
    public List<Arrangement.Open> open(Sources sources, LocalDate today) throws IOException {
        List<Arrangement.Open> open = new ArrayList<>();
        SharedSources shared = SharedSources.read(sources.priceFiles(), sources.rates());
        read(sources.book(), shared, PricesRead.ALL, sources.costingDate(), today, open);
        return open;
    }

    private static Reading<Book> read(
            Path file,
            SharedSources shared,
            PricesRead prices,
            @Nullable LocalDate costingDate,
            LocalDate today,
            List<Arrangement.Open> open)
            throws IOException {
        Findings findings = new Findings();
        Grids book = Grids.ofBook(file);
        List<Grid> grids = new ArrayList<>(book.sheets());
        grids.addAll(shared.grids());
        findings.addAll(book.findings());
        TableFinder finder = new TableFinder(Schemas.ALL, findings);
        Arrangement arranged = new Arranger(finder, findings).arrange(book.sheets());
        List<FoundTable> own = finder.find(arranged.grids());
        List<FoundTable> tables = new ArrayList<>(own);
        tables.addAll(shared.tables());
        findings.addAll(shared.findings());
        List<FoundTable> onSheets = arranged.onSheets(own, findings);
        PlanLosses.check(onSheets, findings);
        Map<Grid, String> proposals = SheetProposals.of(arranged.sheets(), onSheets, findings);
        Origin whole = new Origin(String.valueOf(file.getFileName()), "", "");
        Tables found = new Tables(tables);
        List<String> unknown = unrecognised(arranged.sheets(), onSheets);
        BookAssembler assembler =
                new BookAssembler(found, shared.rates(), findings, whole, unknown, arranged.materials(), prices);
        Book assembled = assembler.assemble(costingDate, today);
        open.addAll(assembler.open());
        AccountWriter writer = new AccountWriter(proposals, findings);
        arranged.account(book, onSheets, writer);
        SharedSources.Accounted others = shared.accounted();
        findings.addAll(others.findings());
        Account account = writer.account().withSeen(SeenTables.of(onSheets)).and(others.account());
        Book known = new Reach(assembled, found).without(findings.list()).withAccount(account);
        return new Reading<>(known, FindingOrder.sorted(findings.list(), grids), account);
    }

    /** The sheets that hold something, but no table. */
    private static List<String> unrecognised(List<Grid> sheets, List<FoundTable> tables) {
        return sheets.stream()
                .filter(grid -> !grid.rows().isEmpty()
                        && tables.stream().noneMatch(table -> table.grid().equals(grid)))
                .map(grid -> "\"" + grid.sheet() + "\"")
                .limit(NAMED_SHEETS)
                .toList();
    }
}
