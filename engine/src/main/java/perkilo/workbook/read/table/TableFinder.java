package perkilo.workbook.read.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.workbook.read.grid.Cell;
import perkilo.workbook.read.grid.Grid;
import perkilo.workbook.schema.Column;
import perkilo.workbook.schema.FormulaSheet;
import perkilo.workbook.schema.Schemas;
import perkilo.workbook.schema.SheetSchema;

/**
 * Finds tables by their header rows, anywhere on a sheet.
 *
 * <p>A row is a header row if its cells name enough columns of one kind of table: one of its signatures, or two columns
 * where the sheet is called like the table. Of several kinds the one that explains most headers is taken. Side by side,
 * tables are parted by a blank column; below one another, the next header row ends the table above.
 */
public final class TableFinder {

    private static final int LONGEST_HEADER = 80;
    private static final int FOR_THE_NAME = 3;
    private static final int FOR_A_FORMULA = 20;

    private final Map<SheetSchema, HeaderIndex> indexes = new LinkedHashMap<>();
    private final Findings findings;
    private final Map<String, List<Candidate>> known = new HashMap<>();

    /**
     * Looks for tables of some kinds.
     *
     * @param schemas the kinds
     * @param findings where columns that are missing or stand twice are reported
     */
    public TableFinder(List<SheetSchema> schemas, Findings findings) {
        schemas.forEach(schema -> indexes.put(schema, new HeaderIndex(schema.columns())));
        this.findings = findings;
    }

    /** The tables of all sheets, in their order; the sheets that the tool wrote itself are left out. */
    public List<Table> find(List<Grid> grids) {
        List<Table> tables = new ArrayList<>();
        for (Grid grid : grids) {
            if (!isResult(grid)) {
                List<Table> found = find(grid);
                tables.addAll(found);
                if (found.isEmpty() && !grid.cells().isEmpty()) {
                    reportHeaderless(grid);
                }
            }
        }
        return tables;
    }

    /** A sheet that is called like a table but holds none was meant to be one. */
    private void reportHeaderless(Grid grid) {
        indexes.keySet().stream()
                .filter(schema -> HeaderText.key(schema.name()).equals(HeaderText.key(grid.title())))
                .findFirst()
                .ifPresent(schema -> findings.error(
                        grid.origin(),
                        "no row of headers is found here; expected columns such as %s"
                                .formatted(schema.columns().stream()
                                        .limit(FOR_THE_NAME)
                                        .map(Column::header)
                                        .collect(Collectors.joining(", ")))));
    }

    private boolean isResult(Grid grid) {
        boolean result = Schemas.RESULT_SHEETS.stream().anyMatch(grid.sheet()::equalsIgnoreCase);
        if (result && !quiet().find(grid).isEmpty()) {
            findings.note(
                    grid.origin(),
                    "this sheet is called like one of results and is not read; rename it if it is yours");
        }
        return result;
    }

    /** The same finder, with nobody told. */
    private TableFinder quiet() {
        return new TableFinder(List.copyOf(indexes.keySet()), new Findings());
    }

    private List<Table> find(Grid grid) {
        List<Header> headers = new ArrayList<>();
        for (Map.Entry<Integer, NavigableMap<Integer, Cell>> row : grid.cells().entrySet()) {
            if (row.getValue().values().stream().filter(this::isKnown).count() >= 2) {
                headers.addAll(headers(grid, row.getKey(), row.getValue()));
            }
        }
        List<Table> tables = new ArrayList<>();
        for (Header header : headers) {
            int last = headers.stream()
                    .filter(other -> other.row() > header.row() && other.overlaps(header))
                    .mapToInt(other -> other.row() - 1)
                    .min()
                    .orElse(grid.cells().lastKey());
            Table table = new Table(header.schema(), grid, header.row(), last, header.columns());
            reportMissing(table);
            tables.add(table);
        }
        return tables;
    }

    private static boolean mayBeHeader(Cell cell) {
        return cell.kind() == Cell.Kind.TEXT && cell.text().length() <= LONGEST_HEADER;
    }

    private boolean isKnown(Cell cell) {
        return mayBeHeader(cell) && !candidates(cell.text()).isEmpty();
    }

    private List<Header> headers(Grid grid, int row, NavigableMap<Integer, Cell> cells) {
        List<Header> parts = new ArrayList<>();
        for (NavigableMap<Integer, Cell> part : parted(cells)) {
            header(grid, row, part).ifPresent(parts::add);
        }
        if (parts.size() > 1) {
            return parts;
        }
        return header(grid, row, cells).map(List::of).orElse(List.of());
    }

    private static List<NavigableMap<Integer, Cell>> parted(NavigableMap<Integer, Cell> cells) {
        List<NavigableMap<Integer, Cell>> parts = new ArrayList<>();
        int from = cells.firstKey();
        for (int column = from; column <= cells.lastKey(); column++) {
            if (!cells.containsKey(column + 1)) {
                NavigableMap<Integer, Cell> part = cells.subMap(from, true, column, true);
                if (!part.isEmpty()) {
                    parts.add(part);
                }
                from = column + 1;
            }
        }
        return parts;
    }

    /** The kind of table that a row heads, with the most headers explained. */
    private Optional<Header> header(Grid grid, int row, NavigableMap<Integer, Cell> cells) {
        Map<SheetSchema, Map<Column, Found>> bySchema = new LinkedHashMap<>();
        cells.forEach((index, cell) -> {
            if (mayBeHeader(cell)) {
                for (Candidate candidate : candidates(cell.text())) {
                    bySchema.computeIfAbsent(candidate.schema(), schema -> new LinkedHashMap<>())
                            .merge(candidate.match().column(), new Found(index, candidate.match()), Found::better);
                }
            }
        });
        return bySchema.entrySet().stream()
                .filter(entry -> isHeader(grid, entry.getKey(), entry.getValue()))
                .max(Comparator.comparingInt(entry -> score(grid, entry.getKey(), entry.getValue())))
                .map(entry -> settled(grid, row, entry.getKey(), entry.getValue(), cells));
    }

    private static boolean isHeader(Grid grid, SheetSchema schema, Map<Column, Found> found) {
        boolean signed = schema.signatures().stream()
                .anyMatch(signature -> found.keySet().containsAll(signature));
        return signed || (found.size() >= 2 && isCalled(grid, schema));
    }

    private static int score(Grid grid, SheetSchema schema, Map<Column, Found> found) {
        boolean formula = schema.equals(FormulaSheet.SCHEMA)
                && found.containsKey(FormulaSheet.MATERIAL)
                && found.containsKey(FormulaSheet.LEVEL_OF);
        return found.size()
                + (isCalled(grid, schema) ? FOR_THE_NAME + FOR_A_FORMULA : 0)
                + (formula ? FOR_A_FORMULA : 0);
    }

    private static boolean isCalled(Grid grid, SheetSchema schema) {
        String key = HeaderText.key(grid.title());
        return HeaderText.key(schema.name()).equals(key)
                || schema.otherNames().stream()
                        .anyMatch(name -> HeaderText.key(name).equals(key));
    }

    private Header settled(
            Grid grid, int row, SheetSchema schema, Map<Column, Found> found, NavigableMap<Integer, Cell> cells) {
        Map<Column, Table.Place> columns = new LinkedHashMap<>();
        found.forEach((column, best) -> {
            columns.put(column, new Table.Place(best.index(), best.match().unit()));
            if (!best.match().notUnderstood().isEmpty()) {
                findings.error(
                        grid.origin(row, best.index()),
                        "the unit \"%s\" of %s is not understood%s"
                                .formatted(
                                        best.match().notUnderstood(),
                                        column.bareHeader(),
                                        column.unit().isEmpty() ? "" : "; expected " + column.unit()));
            }
        });
        reportDoubles(grid, row, schema, found, cells);
        return new Header(schema, row, cells.firstKey(), cells.lastKey(), columns);
    }

    private void reportDoubles(
            Grid grid, int row, SheetSchema schema, Map<Column, Found> found, NavigableMap<Integer, Cell> cells) {
        cells.forEach((index, cell) -> {
            for (Candidate candidate : candidates(cell.text())) {
                Found best = found.get(candidate.match().column());
                if (!candidate.schema().equals(schema)
                        || best == null
                        || best.index() == index
                        || isUsed(found, index)) {
                    continue;
                }
                String column = candidate.match().column().header();
                if (best.match().rank() == candidate.match().rank()) {
                    findings.error(
                            grid.origin(row, index),
                            "\"%s\" is a second column for %s; keep one".formatted(cell.text(), column));
                } else if (candidate.match().column().required()) {
                    findings.note(
                            grid.origin(row, index),
                            "\"%s\" is not read; %s is taken from \"%s\""
                                    .formatted(
                                            cell.text(),
                                            column,
                                            cells.getOrDefault(best.index(), Cell.BLANK)
                                                    .text()));
                }
            }
        });
    }

    private static boolean isUsed(Map<Column, Found> found, int index) {
        return found.values().stream().anyMatch(used -> used.index() == index);
    }

    private List<Candidate> candidates(String text) {
        return known.computeIfAbsent(text, this::compare);
    }

    private List<Candidate> compare(String text) {
        HeaderText header = HeaderText.of(text);
        List<Candidate> all = new ArrayList<>();
        indexes.forEach(
                (schema, index) -> index.match(header).ifPresent(match -> all.add(new Candidate(schema, match))));
        return all;
    }

    private void reportMissing(Table table) {
        for (Column column : table.schema().required()) {
            if (!table.has(column)) {
                findings.error(
                        table.header(),
                        "the %s table has no column \"%s\" (%s)"
                                .formatted(table.schema().name(), column.header(), column.explanation()));
            }
        }
    }

    private record Candidate(SheetSchema schema, HeaderIndex.HeaderMatch match) {}

    private record Found(int index, HeaderIndex.HeaderMatch match) {

        Found better(Found other) {
            return other.match.rank() < match.rank() ? other : this;
        }
    }

    private record Header(
            SheetSchema schema, int row, int firstColumn, int lastColumn, Map<Column, Table.Place> columns) {

        boolean overlaps(Header other) {
            return firstColumn <= other.lastColumn && other.firstColumn <= lastColumn;
        }
    }
}
