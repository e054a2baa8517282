package perkilo.reading.arrange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import perkilo.names.Names;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.BatchesSheet;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.SuppliersSheet;
import perkilo.xlsx.grid.Cell;

/** The names of things in the tables of a workbook that are understood as they are. */
public final class BookNames {

    private static final int MOST_ROWS = 2000;

    private final Map<String, String> suppliers = new LinkedHashMap<>();
    private final Set<String> items = new HashSet<>();
    private final Set<String> products = new HashSet<>();
    private final Set<String> formulas = new HashSet<>();

    private BookNames() {}

    /** The names in some tables. */
    public static BookNames of(List<FoundTable> tables) {
        BookNames names = new BookNames();
        for (FoundTable table : tables) {
            if (!table.schema().equals(OffersSheet.SCHEMA)) {
                names.add(table);
            }
        }
        return names;
    }

    private void add(FoundTable table) {
        table.stream(new Findings()).limit(MOST_ROWS).forEach(row -> {
            text(row, SuppliersSheet.SUPPLIER).ifPresent(name -> suppliers.putIfAbsent(Names.key(name), name));
            for (InputColumn column :
                    List.of(MaterialsSheet.MATERIAL, FormulaSheet.MATERIAL, ComponentsSheet.COMPONENT)) {
                text(row, column).ifPresent(name -> items.add(Names.key(name)));
            }
            for (InputColumn column : List.of(ProductsSheet.PRODUCT, ComponentsSheet.PRODUCT)) {
                text(row, column).ifPresent(name -> products.add(Names.key(name)));
            }
            for (InputColumn column :
                    List.of(ProductsSheet.FORMULA, BatchesSheet.FORMULA, RunsSheet.FORMULA, FormulaSheet.FORMULA)) {
                text(row, column).ifPresent(name -> formulas.add(Names.key(name)));
            }
        });
    }

    private static Optional<String> text(TableRow row, InputColumn column) {
        return row.table().has(column) && row.cell(column).kind() == Cell.Kind.TEXT
                ? Optional.of(row.cell(column).text())
                : Optional.empty();
    }

    /** The supplier that a text names, as the workbook spells it; empty if it names none. */
    public Optional<String> supplier(String text) {
        return Optional.ofNullable(suppliers.get(Names.key(text)));
    }

    /** The suppliers whose names occur in a text. */
    List<String> suppliersIn(String text) {
        String key = Names.key(text);
        List<String> found = new ArrayList<>();
        suppliers.forEach((name, typed) -> {
            if (key.contains(name)) {
                found.add(typed);
            }
        });
        return found;
    }

    /** Whether formulas or products use an item of this name. */
    public boolean isItem(String text) {
        return items.contains(Names.key(text));
    }

    /** Whether a product has this name. */
    public boolean isProduct(String text) {
        return products.contains(Names.key(text));
    }

    /** Whether products or batches use a formula of this name. */
    public boolean isFormula(String text) {
        return formulas.contains(Names.key(text));
    }
}
