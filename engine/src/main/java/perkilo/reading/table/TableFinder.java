package perkilo.reading.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.stream.Collectors;
import perkilo.schema.Column;
import perkilo.schema.Schemas;
import perkilo.schema.SheetSchema;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Finds tables by their header rows, anywhere on a sheet.
 *
 * <p>Side by side, tables are parted by a blank column; below one another, the next header row ends the table above.
 */
public final class TableFinder {

    private static final int NAMED_COLUMNS = 3;
    private static final int NAMED_HEADERS = 8;

    private final List<SheetSchema> schemas;
    private final HeaderRows headerRows;
    private final NearHeaders nearHeaders;
    private final Findings findings;

    /**
     * Looks for tables of some kinds.
     *
     * @param schemas the kinds
     * @param findings where columns that are missing or stand twice are reported
     */
    public TableFinder(List<SheetSchema> schemas, Findings findings) {
        this.schemas = schemas;
        this.headerRows = new HeaderRows(schemas, findings);
        this.nearHeaders = new NearHeaders(findings);
        this.findings = findings;
    }

    /** The tables of all sheets, in their order; sheets that are called like those of results are left out. */
    public List<Table> find(List<Grid> grids) {
        List<Table> tables = new ArrayList<>();
        for (Grid grid : grids) {
            if (isResult(grid)) {
                continue;
            }
            List<Table> found = find(grid);
            tables.addAll(found);
            if (found.isEmpty() && !grid.rows().isEmpty()) {
                reportHeaderless(grid);
            }
        }
        return tables;
    }

    private boolean isResult(Grid grid) {
        boolean result = Schemas.RESULT_SHEETS.stream().anyMatch(grid.sheet()::equalsIgnoreCase);
        if (result && !new TableFinder(schemas, new Findings()).find(grid).isEmpty()) {
            findings.note(
                    grid.origin(),
                    "this sheet is called like one of results and is not read; rename it if it is yours");
        }
        return result;
    }

    /** A sheet that is called like a table but holds none was meant to be one. */
    private void reportHeaderless(Grid grid) {
        schemas.stream()
                .filter(schema -> HeaderText.key(schema.name()).equals(HeaderText.key(grid.title())))
                .findFirst()
                .ifPresent(schema -> findings.error(
                        grid.origin(),
                        "no row of headers is found here; expected columns such as %s"
                                .formatted(schema.columns().stream()
                                        .limit(NAMED_COLUMNS)
                                        .map(Column::header)
                                        .collect(Collectors.joining(", ")))));
    }

    private List<Table> find(Grid grid) {
        List<HeaderRows.Header> headers = new ArrayList<>();
        for (int row : grid.rows().numbers()) {
            if (headerRows.mayBeHeader(grid, row)) {
                headers.addAll(headers(grid, row, headerRows.heads(grid, row)));
            }
        }
        List<Table> tables = new ArrayList<>();
        for (HeaderRows.Header header : headers) {
            int last = headers.stream()
                    .filter(other -> other.row() > header.row() && other.overlaps(header))
                    .mapToInt(other -> other.row() - 1)
                    .min()
                    .orElse(grid.rows().last());
            Table table = new Table(header.schema(), grid, header.row(), last, header.columns());
            reportMissing(table, header.unknown());
            nearHeaders.report(table, header.unknown());
            reportHidden(table);
            tables.add(table);
        }
        return tables;
    }

    private List<HeaderRows.Header> headers(Grid grid, int row, NavigableMap<Integer, Cell> cells) {
        if (headerRows.isTitleOver(grid, row, cells)) {
            return List.of();
        }
        List<NavigableMap<Integer, Cell>> parts = parted(cells).stream()
                .filter(part -> headerRows.isHeader(grid, row, part))
                .toList();
        if (parts.size() < 2) {
            return headerRows.header(grid, row, cells).map(List::of).orElse(List.of());
        }
        return parts.stream()
                .flatMap(part -> headerRows.header(grid, row, part).stream())
                .toList();
    }

    private static List<NavigableMap<Integer, Cell>> parted(NavigableMap<Integer, Cell> cells) {
        List<NavigableMap<Integer, Cell>> parts = new ArrayList<>();
        int from = cells.firstKey();
        int before = from;
        for (int column : cells.keySet()) {
            if (column > before + 1) {
                parts.add(cells.subMap(from, true, before, true));
                from = column;
            }
            before = column;
        }
        parts.add(cells.tailMap(from, true));
        return parts;
    }

    /** What a person does not see must not set a price unnoticed. */
    private void reportHidden(Table table) {
        if (table.grid().hiddenColumns().isEmpty()) {
            return;
        }
        table.columns().values().stream()
                .filter(place -> table.grid().hiddenColumns().get(place.index()))
                .sorted(Comparator.comparingInt(Table.Place::index))
                .forEach(place -> findings.warning(
                        table.grid().origin(table.headerRow(), place.index()),
                        "the column \"%s\" is hidden, and what stands in it counts; unhide it and look it through"
                                .formatted(table.grid()
                                        .at(table.headerRow(), place.index())
                                        .text())));
    }

    private void reportMissing(Table table, List<Integer> unknown) {
        for (Column column : table.schema().required()) {
            if (!table.has(column)) {
                findings.error(
                        table.header(),
                        "the %s table has no column \"%s\" (%s)%s"
                                .formatted(
                                        table.schema().name(),
                                        column.header(),
                                        column.explanation(),
                                        notUnderstood(table, unknown)));
            }
        }
    }

    /** The headers one of which may be what is missed, spelled in a way that nobody foresaw. */
    private static String notUnderstood(Table table, List<Integer> unknown) {
        return unknown.isEmpty()
                ? ""
                : unknown.stream()
                        .limit(NAMED_HEADERS)
                        .map(index -> "\"%s\" in %s"
                                .formatted(
                                        table.grid()
                                                .at(table.headerRow(), index)
                                                .text(),
                                        table.grid()
                                                .origin(table.headerRow(), index)
                                                .where()))
                        .collect(Collectors.joining(", ", "; not understood: ", ""));
    }
}
