package perkilo.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.reading.arrange.Arranger;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableFinder;
import perkilo.reading.table.TableRow;
import perkilo.schema.OffersSheet;
import perkilo.schema.Schemas;
import perkilo.schema.SuppliersSheet;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/**
 * Sheets that are known before a new list is read.
 *
 * @param grids the sheets of a workbook, and those sheets of a folder that hold no offers
 * @param suppliers the names of suppliers in all of them, in offers too
 */
public record KnownSheets(List<Grid> grids, Set<String> suppliers) {

    public KnownSheets {
        grids = List.copyOf(grids);
    }

    /**
     * Reads what is known.
     *
     * @param book a workbook; null for none
     * @param folders folders of price lists and materials
     */
    public static KnownSheets read(@Nullable Path book, List<Path> folders) throws IOException {
        List<Grid> sheets = book == null ? List.of() : Grids.ofBook(book).sheets();
        TableFinder finder = new TableFinder(Schemas.ALL, new Findings());
        List<Grid> grids = new ArrayList<>(
                new Arranger(finder, new Findings()).arrange(sheets).grids());
        Set<String> suppliers = new LinkedHashSet<>();
        addSuppliers(finder.find(grids), suppliers);
        for (Path file : PriceFiles.expand(folders)) {
            List<Grid> ofFile = Grids.ofPriceFile(file).sheets();
            List<FoundTable> tables = new TableFinder(Schemas.OF_PRICE_LISTS, new Findings()).find(ofFile);
            addSuppliers(tables, suppliers);
            tables.stream()
                    .filter(table -> !table.schema().equals(OffersSheet.SCHEMA))
                    .map(FoundTable::grid)
                    .distinct()
                    .forEach(grids::add);
        }
        return new KnownSheets(grids, suppliers);
    }

    private static void addSuppliers(List<FoundTable> tables, Set<String> suppliers) {
        for (FoundTable table : tables) {
            if (table.has(SuppliersSheet.SUPPLIER)) {
                for (TableRow row : table.rows(new Findings())) {
                    suppliers.add(row.text(SuppliersSheet.SUPPLIER));
                }
            }
        }
        suppliers.remove("");
    }
}
