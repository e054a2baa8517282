package perkilo.reading.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.Schemas;
import perkilo.schema.SheetSchema;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Finds tables by their header rows, anywhere on a sheet.
 *
 * <p>Tables side by side are separated by a blank column; below one another, the next header row ends the table above.
 */
public final class TableFinder {

    private static final int NAMED_COLUMNS = 3;
    private static final int NAMED_HEADERS = 8;
    private static final int LINE_CELLS = 2;

    private final List<SheetSchema> schemas;
    private final HeaderRows headerRows;
    private final NearHeaders nearHeaders;
    private final Findings findings;

    /**
     * Looks for tables of some kinds.
     *
     * @param schemas the kinds
     * @param findings receives columns that are missing or there twice
     */
    public TableFinder(List<SheetSchema> schemas, Findings findings) {
        this.schemas = schemas;
        this.headerRows = new HeaderRows(schemas, findings);
        this.nearHeaders = new NearHeaders(findings);
        this.findings = findings;
    }

    private TableFinder(TableFinder other, Findings findings) {
        this.schemas = other.schemas;
        this.headerRows = other.headerRows.reporting(findings);
        this.nearHeaders = new NearHeaders(findings);
        this.findings = findings;
    }

    /** The kinds that it looks for. */
    public List<SheetSchema> schemas() {
        return schemas;
    }

    /**
     * One that looks for the same kinds, and knows what this one has learned of headers.
     *
     * @param others receives what that one finds
     */
    public TableFinder reporting(Findings others) {
        return new TableFinder(this, others);
    }

    /** The tables of all sheets, in their order; sheets with the name of a result sheet are left out. */
    public List<FoundTable> find(List<Grid> grids) {
        List<FoundTable> tables = new ArrayList<>();
        List<Grid> without = new ArrayList<>();
        for (Grid grid : grids) {
            if (isResult(grid)) {
                continue;
            }
            List<FoundTable> found = find(grid);
            tables.addAll(found);
            if (found.isEmpty() && !grid.rows().isEmpty()) {
                without.add(grid);
            }
        }
        // a sheet may come in parts, of which some hold the table
        without.stream()
                .filter(grid -> tables.stream().noneMatch(table -> isSameSheet(table.grid(), grid)))
                .forEach(this::reportHeaderless);
        return tables;
    }

    private static boolean isSameSheet(Grid one, Grid other) {
        return one.sheet().equals(other.sheet()) && one.file().equals(other.file());
    }

    /** Whether a text is a header of some table, with a unit that is understood. */
    public boolean knows(Cell header) {
        return headerRows.knows(header);
    }

    /** Whether a sheet has the name of a result sheet. */
    static boolean hasResultName(Grid grid) {
        return Schemas.RESULT_SHEETS.stream().anyMatch(grid.sheet()::equalsIgnoreCase);
    }

    private boolean isResult(Grid grid) {
        boolean result = hasResultName(grid);
        if (result && !reporting(new Findings()).find(grid).isEmpty()) {
            findings.note(grid.origin(), TableMessages.resultSheet());
        }
        return result;
    }

    /** Reports a sheet that has the name of a table but holds none. */
    private void reportHeaderless(Grid grid) {
        schemas.stream()
                .filter(schema -> grid.kind().equals(schema.name())
                        || HeaderText.key(schema.name()).equals(HeaderText.key(grid.title())))
                .findFirst()
                .ifPresent(schema -> {
                    List<String> columns = schema.columns().stream()
                            .limit(NAMED_COLUMNS)
                            .map(InputColumn::header)
                            .toList();
                    List<String> theirs = SheetLines.headers(grid).stream()
                            .limit(NAMED_HEADERS)
                            .map(header -> "\"" + header + "\"")
                            .toList();
                    findings.error(
                            grid.origin(),
                            theirs.isEmpty()
                                    ? TableMessages.noHeaders(columns)
                                    : TableMessages.unknownHeaders(schema.name(), theirs, columns));
                });
    }

    private List<FoundTable> find(Grid grid) {
        List<HeaderRows.Header> headers = new ArrayList<>();
        for (int row : grid.rows().numbers()) {
            if (headerRows.mayBeHeader(grid, row)) {
                headers.addAll(headers(grid, row, headerRows.heads(grid, row)));
            }
        }
        List<FoundTable> tables = new ArrayList<>();
        for (HeaderRows.Header header : headers) {
            int last = headers.stream()
                    .filter(other -> other.row() > header.row() && other.overlaps(header))
                    .mapToInt(other -> other.row() - 1)
                    .min()
                    .orElse(grid.rows().last());
            FoundTable table =
                    new FoundTable(header.schema(), grid, header.row(), last, header.columns(), header.region(last));
            reportMissing(table, header.unknown());
            nearHeaders.report(table, header.unknown());
            reportHidden(table);
            new StruckCells(table, findings).find();
            tables.add(table);
        }
        findPriceLines(grid, tables);
        return tables;
    }

    /** Finds the lines above and inside tables of prices that say what their prices are in. */
    private static void findPriceLines(Grid grid, List<FoundTable> tables) {
        for (FoundTable table : tables) {
            if (!table.has(OffersSheet.PRICE)) {
                continue;
            }
            int above = tables.stream()
                    .filter(other -> other.headerRow() < table.headerRow())
                    .mapToInt(FoundTable::lastRow)
                    .filter(row -> row < table.region().topRow())
                    .max()
                    .orElse(-1);
            for (int row : grid.rows().between(above, table.region().topRow())) {
                addPriceLine(table, row, table.headerRow());
            }
            for (int row : grid.rows().between(table.headerRow(), table.lastRow() + 1)) {
                addPriceLine(table, row, row);
            }
        }
    }

    /** Adds a row, if it is such a line, for the prices from another row on. */
    private static void addPriceLine(FoundTable table, int row, int from) {
        if (!table.grid().rows().isShort(row, LINE_CELLS)) {
            return;
        }
        String text = SheetLines.text(table.grid().row(row).values());
        PriceLine.parse(row, text)
                .map(line -> line.without(table.has(OffersSheet.CURRENCY_OF_PRICE), table.has(OffersSheet.PRICE_PER)))
                .filter(line -> !line.isEmpty())
                .ifPresent(line -> table.region().priceLines().put(from, line));
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

    /** Warns of hidden columns, because what they hold is used although it cannot be seen. */
    private void reportHidden(FoundTable table) {
        if (table.grid().hiddenColumns().isEmpty()) {
            return;
        }
        table.columns().values().stream()
                .filter(place -> table.grid().hiddenColumns().get(place.index()))
                .sorted(Comparator.comparingInt(FoundTable.Place::index))
                .forEach(place -> findings.warning(
                        table.grid().origin(table.headerRow(), place.index()),
                        TableMessages.hiddenColumn(table.grid()
                                .at(table.headerRow(), place.index())
                                .text())));
    }

    private void reportMissing(FoundTable table, List<Integer> unknown) {
        for (InputColumn column : table.schema().required()) {
            if (!table.has(column)) {
                List<String> unread = unread(table, unknown);
                String name = table.schema().name();
                findings.error(
                        table.header(),
                        unread.isEmpty()
                                ? TableMessages.noColumn(name, column.header(), column.explanation())
                                : TableMessages.noColumn(name, column.header(), column.explanation(), unread));
            }
        }
    }

    /** Headers that were not recognised, with their cells: one of them may be the column that is missing. */
    private static List<String> unread(FoundTable table, List<Integer> unknown) {
        return unknown.stream()
                .limit(NAMED_HEADERS)
                .map(index -> "\"" + table.grid().at(table.headerRow(), index).text() + "\" in "
                        + table.grid().origin(table.headerRow(), index).where())
                .toList();
    }
}
