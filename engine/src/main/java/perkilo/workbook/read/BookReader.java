package perkilo.workbook.read;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.units.DatedRate;
import perkilo.workbook.read.grid.Grid;
import perkilo.workbook.read.grid.Grids;
import perkilo.workbook.read.table.Findings;
import perkilo.workbook.read.table.Table;
import perkilo.workbook.read.table.TableFinder;
import perkilo.workbook.schema.Schemas;

/** Reads a workbook, with its price lists and rates, into a {@link Book}. */
public final class BookReader {

    /**
     * Reads everything and reports everything that is wrong with it.
     *
     * @param sources what is read together
     * @param today the costing date where none is set
     * @return the book, to be used only if no finding is an error, and all findings in the order of the files
     * @throws perkilo.workbook.read.grid.UnreadableFileException if a file cannot be opened; its message says why
     */
    public Reading<Book> read(Sources sources, LocalDate today) throws IOException {
        Findings findings = new Findings();
        Grids book = Grids.ofBook(sources.book());
        List<Grid> grids = new ArrayList<>(book.sheets());
        findings.addAll(book.findings());
        List<Table> tables = new ArrayList<>(new TableFinder(Schemas.ALL, findings).find(book.sheets()));
        for (Path file : PriceFiles.expand(sources.priceFiles())) {
            Grids prices = Grids.ofPriceFile(file);
            grids.addAll(prices.sheets());
            findings.addAll(prices.findings());
            boolean named = sources.priceFiles().contains(file);
            tables.addAll(priceTables(file, named, prices.sheets(), findings));
        }
        List<DatedRate> rates = new ArrayList<>();
        Path rateFile = sources.rates();
        if (rateFile != null) {
            Reading<List<DatedRate>> read = new RatesReader().read(rateFile);
            findings.addAll(read.findings());
            rates.addAll(read.value());
        }
        Book assembled = new BookAssembler(
                        new Tables(tables), rates, findings, new Origin(name(sources.book()), "", ""))
                .assemble(sources.costingDate(), today);
        return new Reading<>(assembled, FindingOrder.sorted(findings.list(), grids));
    }

    /** The tables of a price list; one that was named must hold some, one that only lies in a folder need not. */
    private static List<Table> priceTables(Path file, boolean named, List<Grid> grids, Findings findings) {
        List<Table> tables = new TableFinder(Schemas.OF_PRICE_LISTS, findings).find(grids);
        Origin origin = new Origin(name(file), "", "");
        if (tables.isEmpty() && named) {
            findings.error(
                    origin,
                    "holds no price list; expected a table with columns such as Supplier, Item, Pack size and Price");
        } else if (tables.isEmpty()) {
            findings.note(origin, "holds no price list and is left alone");
        }
        return tables;
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
