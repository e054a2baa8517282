package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.NumberWords;
import perkilo.layouts.Quantity;
import perkilo.reading.table.FoundTable;
import perkilo.schema.InputColumn;
import perkilo.schema.RunsSheet;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.GridBuilder;

/**
 * Sizes of runs as columns, as a Runs table: 500, 1000, 5000 or 5 kg, 50 kg over marks; or "Run 1", "Units 2" over the
 * sizes.
 */
final class RunArranger {

    private static final int LEAST = 2;
    private static final Set<String> MARKS = Set.of("x", "✓", "✔", "yes", "ja", "oui", "sí", "si", "sì", "1", "•");

    private final Grid grid;
    private final Grid head;
    private final List<FoundTable> tables;
    private final BookNames names;

    RunArranger(Grid grid, Grid head, List<FoundTable> tables, BookNames names) {
        this.grid = grid;
        this.head = head;
        this.tables = tables;
        this.names = names;
    }

    /** The runs of a sheet; empty if it holds none in such a layout. */
    Optional<ArrangedPart> part() {
        boolean called = grid.title().equalsIgnoreCase(RunsSheet.SCHEMA.name())
                || RunsSheet.SCHEMA.otherNames().stream().anyMatch(grid.title()::equalsIgnoreCase);
        boolean understood =
                tables.stream().anyMatch(table -> table.has(RunsSheet.UNITS) || table.has(RunsSheet.BATCH_KG));
        if (understood) {
            return Optional.empty();
        }
        for (int header : head.rows().numbers()) {
            if (!called && !isNumbered(header)) {
                continue;
            }
            Optional<ArrangedPart> part = below(header);
            if (part.isPresent()) {
                return part;
            }
        }
        return Optional.empty();
    }

    /** Whether a row heads products or formulas that the workbook knows, and two or more sizes: Units 1, Units 2. */
    private boolean isNumbered(int header) {
        long numbered = head.row(header).values().stream()
                .filter(cell -> SheetCells.isText(cell)
                        && Headings.numberedOfRuns(cell.text()).isPresent())
                .count();
        Integer key = numbered < LEAST ? null : keyColumn(header);
        if (key == null) {
            return false;
        }
        Optional<InputColumn> named = Headings.ofRuns(head.at(header, key).text());
        boolean known = Arrays.stream(rows(header, key))
                .allMatch(row -> names.isProduct(grid.at(row, key).text())
                        || names.isFormula(grid.at(row, key).text()));
        Set<InputColumn> sizes = new HashSet<>();
        Map<Integer, Cell> others = head.row(header).tailMap(key, false);
        others.values().forEach(cell -> Headings.numberedOfRuns(cell.text()).ifPresent(sizes::add));
        boolean all = others.values().stream()
                .allMatch(cell -> Headings.numberedOfRuns(cell.text()).isPresent());
        boolean ofSizes = sizes.equals(Set.of(RunsSheet.UNITS)) || sizes.equals(Set.of(RunsSheet.BATCH_KG));
        return known
                && all
                && ofSizes
                && others.size() >= LEAST
                && named.filter(column -> column.equals(RunsSheet.PRODUCT) || column.equals(RunsSheet.FORMULA))
                        .isPresent();
    }

    private Optional<ArrangedPart> below(int header) {
        Integer key = keyColumn(header);
        if (key == null) {
            return Optional.empty();
        }
        boolean allFormulas = rows(header, key).length > 0;
        for (int row : rows(header, key)) {
            allFormulas &= names.isFormula(grid.at(row, key).text())
                    && !names.isProduct(grid.at(row, key).text());
        }
        Map<Integer, Cell> sizes = new LinkedHashMap<>();
        boolean marks = true;
        boolean numbers = true;
        boolean kg = allFormulas;
        for (Map.Entry<Integer, Cell> cell :
                head.row(header).tailMap(key, false).entrySet()) {
            Size size = size(cell.getValue());
            boolean filled = false;
            for (int row : rows(header, key)) {
                Cell value = grid.at(row, cell.getKey());
                filled |= !value.isBlank();
                marks &= value.isBlank() || MARKS.contains(value.text().toLowerCase(Locale.ROOT));
                numbers &= value.isBlank() || SheetCells.number(value) != null;
            }
            if (filled && !SheetCells.isTotal(cell.getValue())) {
                kg |= size != null && size.kg();
                sizes.put(cell.getKey(), size == null ? Cell.BLANK : Cell.number(size.number()));
            }
        }
        boolean said = sizes.values().stream().noneMatch(Cell::isBlank);
        if (sizes.size() < LEAST || !((marks && said) || numbers)) {
            return Optional.empty();
        }
        return Optional.of(table(header, key, sizes, kg, marks && said));
    }

    private ArrangedPart table(int header, int key, Map<Integer, Cell> sizes, boolean kg, boolean marks) {
        GridBuilder builder = new GridBuilder(grid, RunsSheet.SCHEMA.name());
        BitSet used = new BitSet();
        BitSet columns = new BitSet();
        used.set(header);
        columns.set(key);
        builder.row(grid.origin(header, key));
        builder.said(0, Cell.text((kg ? RunsSheet.FORMULA : RunsSheet.PRODUCT).header()), grid.origin(header, key));
        builder.said(1, Cell.text((kg ? RunsSheet.BATCH_KG : RunsSheet.UNITS).header()), grid.origin(header, key));
        for (int row : rows(header, key)) {
            used.set(row);
            sizes.forEach((column, size) -> {
                columns.set(column);
                if (!grid.at(row, column).isBlank() && !SheetCells.isDash(grid.at(row, column))) {
                    builder.row(grid.origin(row, column));
                    builder.said(0, grid.at(row, key), grid.origin(row, key));
                    if (marks) {
                        builder.said(1, size, grid.origin(header, column));
                    } else {
                        builder.typed(1, row, column);
                    }
                }
            });
        }
        Map<Integer, String> uses = new LinkedHashMap<>();
        uses.put(key, (kg ? RunsSheet.FORMULA : RunsSheet.PRODUCT).header());
        sizes.keySet().forEach(column -> uses.put(column, (kg ? RunsSheet.BATCH_KG : RunsSheet.UNITS).header()));
        return new ArrangedPart(grid, RunsSheet.SCHEMA, builder.grid(), header, used, columns, uses);
    }

    /** The rows below a header that name a product or a formula. */
    private int[] rows(int header, int key) {
        return Arrays.stream(grid.rows().below(header))
                .filter(row -> SheetCells.isText(grid.at(row, key)) && !SheetCells.isTotal(grid.at(row, key)))
                .toArray();
    }

    private @Nullable Integer keyColumn(int header) {
        for (int column : head.row(header).keySet()) {
            for (int row : head.rows().below(header)) {
                String text = head.at(row, column).text();
                if (names.isProduct(text) || names.isFormula(text)) {
                    return column;
                }
            }
        }
        return null;
    }

    /** A size in a header. */
    private record Size(BigDecimal number, boolean kg) {}

    private static @Nullable Size size(Cell cell) {
        BigDecimal number = cell.number();
        if (number != null) {
            return new Size(number, false);
        }
        NumberWords words =
                SheetCells.isText(cell) ? NumberWords.of(cell.text()).orElse(null) : null;
        BigDecimal said = words == null ? null : SheetCells.number(Cell.text(words.digits()));
        Quantity unit = words == null ? null : Quantity.unit(words.words()).orElse(null);
        if (said == null || unit == null) {
            return null;
        }
        Optional<BigDecimal> kg = unit.times(said).in(Measure.KG);
        return kg.map(amount -> new Size(amount, true)).orElseGet(() -> new Size(said, false));
    }
}
