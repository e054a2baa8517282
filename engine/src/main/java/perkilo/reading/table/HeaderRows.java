package perkilo.reading.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.SuppliersSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Finds header rows, and the kind of table below each.
 *
 * <p>A row is a header row if its cells name enough columns of one kind of table: one of its signatures, or two columns
 * if the sheet has the name of the table. Of several kinds, the one with the name of the sheet comes first, then the
 * formula, then the one that recognises most headers.
 */
final class HeaderRows {

    private static final int LONGEST_HEADER = 80;
    private static final int FOR_THE_NAME = 200;
    private static final int FOR_A_FORMULA = 100;

    /** Texts that begin like a header; long lists have many. */
    private static final int MOST_REMEMBERED = 20_000;

    private final Map<SheetSchema, HeaderIndex> indexes;
    private final Findings findings;
    private final Map<String, List<Candidate>> known;
    private final HeaderBeginnings beginnings;

    HeaderRows(List<SheetSchema> schemas, Findings findings) {
        this.findings = findings;
        this.indexes = new LinkedHashMap<>();
        this.known = new HashMap<>();
        List<String> keys = new ArrayList<>();
        for (SheetSchema schema : schemas) {
            HeaderIndex index = new HeaderIndex(schema.columns());
            indexes.put(schema, index);
            keys.addAll(index.keys());
        }
        this.beginnings = new HeaderBeginnings(keys);
    }

    private HeaderRows(HeaderRows other, Findings findings) {
        this.findings = findings;
        this.indexes = other.indexes;
        this.known = other.known;
        this.beginnings = other.beginnings;
    }

    /** The same, with what is wrong reported elsewhere. */
    HeaderRows reporting(Findings others) {
        return new HeaderRows(this, others);
    }

    /** The cells of a row, with those of the row above that were merged downwards into it. */
    static NavigableMap<Integer, Cell> cells(Grid grid, int row) {
        NavigableMap<Integer, Cell> own = grid.row(row);
        if (grid.merged().isEmpty()) {
            return own;
        }
        NavigableMap<Integer, Cell> all = new TreeMap<>(own);
        grid.row(row - 1).forEach((column, cell) -> {
            if (grid.mergedAt(row, column)
                    .filter(block -> block.firstRow() == row - 1)
                    .isPresent()) {
                all.putIfAbsent(column, cell);
            }
        });
        return all;
    }

    /** Whether at least two cells could be headers of some table: a quick look before the real one. */
    boolean mayBeHeader(Grid grid, int row) {
        int[] headers = {0};
        Consumer<Cell> count =
                cell -> headers[0] += headers[0] >= 2 || candidates(cell).isEmpty() ? 0 : 1;
        if (grid.merged().isEmpty()) {
            grid.rows().words(row, count);
        } else {
            cells(grid, row).values().forEach(count);
        }
        return headers[0] >= 2;
    }

    /** Whether cells head a table. */
    boolean isHeader(Grid grid, int row, NavigableMap<Integer, Cell> cells) {
        return best(grid, row, cells).isPresent();
    }

    /**
     * The cells of a row that may head a table. If headers begin in the row above and continue here, the complete
     * headers of that row are included.
     */
    NavigableMap<Integer, Cell> heads(Grid grid, int row) {
        NavigableMap<Integer, Cell> own = cells(grid, row);
        NavigableMap<Integer, Cell> above = row == 0 ? new TreeMap<>() : cells(grid, row - 1);
        return !above.isEmpty() && mayBeHeader(grid, row - 1) && isTitleOver(grid, row - 1, above)
                ? carriedDown(own, above)
                : own;
    }

    private static NavigableMap<Integer, Cell> carriedDown(
            NavigableMap<Integer, Cell> own, NavigableMap<Integer, Cell> above) {
        NavigableMap<Integer, Cell> all = new TreeMap<>(own);
        above.forEach(all::putIfAbsent);
        return all;
    }

    /** Whether this row is only a title: the row below heads the same kind of table and names more columns. */
    boolean isTitleOver(Grid grid, int row, NavigableMap<Integer, Cell> cells) {
        NavigableMap<Integer, Cell> next = cells(grid, row + 1);
        NavigableMap<Integer, Cell> below = next.isEmpty() ? next : carriedDown(next, cells);
        if (below.isEmpty() || !mayBeHeader(grid, row + 1)) {
            return false;
        }
        Optional<Kind> here = best(grid, row, cells);
        Optional<Kind> there = best(grid, row + 1, below);
        return here.isPresent()
                && there.isPresent()
                && here.get().schema().equals(there.get().schema())
                && here.get().found().size() < there.get().found().size();
    }

    /** The header of the kind of table that cells head, with what is wrong with it reported; empty if none. */
    Optional<Header> header(Grid grid, int row, NavigableMap<Integer, Cell> cells) {
        return best(grid, row, cells).map(best -> {
            reportUnits(grid, row, best.found());
            reportDoubles(grid, row, best, cells);
            Map<InputColumn, FoundTable.Place> columns = new LinkedHashMap<>();
            best.found()
                    .forEach((column, found) -> columns.put(
                            column,
                            new FoundTable.Place(found.index(), found.match().unit())));
            return new Header(
                    best.schema(),
                    row,
                    beginsAbove(grid, row, best, cells) ? row - 1 : row,
                    cells.firstKey(),
                    cells.lastKey(),
                    columns,
                    unknown(grid, row, best.schema(), cells));
        });
    }

    /** Whether a header begins in the row above. */
    private boolean beginsAbove(Grid grid, int row, Kind kind, NavigableMap<Integer, Cell> cells) {
        if (row == 0 || grid.row(row - 1).isEmpty()) {
            return false;
        }
        NavigableMap<Integer, Cell> own = grid.row(row);
        NavigableMap<Integer, Cell> above = grid.row(row - 1);
        for (Found found : kind.found().values()) {
            Cell cell = own.get(found.index());
            Cell over = above.get(found.index());
            boolean both = cell != null
                    && over != null
                    && over.kind() == Cell.Kind.TEXT
                    && !candidates(Cell.text(over.text() + " " + cell.text())).isEmpty();
            if (both || (cell == null && cells.containsKey(found.index()))) {
                return true;
            }
        }
        return false;
    }

    /** The places of words that are not a header of this kind of table. */
    private List<Integer> unknown(Grid grid, int row, SheetSchema schema, NavigableMap<Integer, Cell> cells) {
        List<Integer> unknown = new ArrayList<>();
        cells.forEach((index, cell) -> {
            boolean known = candidates(grid, row, index, cell).stream()
                    .anyMatch(candidate -> candidate.schema().equals(schema));
            if (cell.kind() == Cell.Kind.TEXT && !known) {
                unknown.add(index);
            }
        });
        return unknown;
    }

    private Optional<Kind> best(Grid grid, int row, NavigableMap<Integer, Cell> cells) {
        Map<SheetSchema, Map<InputColumn, Found>> bySchema = new LinkedHashMap<>();
        for (Map.Entry<Integer, Cell> cell : cells.entrySet()) {
            for (Candidate candidate : candidates(grid, row, cell.getKey(), cell.getValue())) {
                bySchema.computeIfAbsent(candidate.schema(), schema -> new LinkedHashMap<>())
                        .merge(candidate.match().column(), new Found(cell.getKey(), candidate.match()), Found::better);
            }
        }
        Kind best = null;
        for (Map.Entry<SheetSchema, Map<InputColumn, Found>> schema : bySchema.entrySet()) {
            Kind kind = new Kind(schema.getKey(), schema.getValue());
            boolean names = schema.getKey().equals(SuppliersSheet.SCHEMA)
                    && bySchema.containsKey(OffersSheet.SCHEMA)
                    && bySchema.get(OffersSheet.SCHEMA).containsKey(OffersSheet.ITEM);
            boolean list = names && !kind.isCalled(grid); // a list of items, whatever it lacks
            if (list || !grid.mayHold(schema.getKey().name())) {
                continue;
            }
            if (kind.isEnough(grid) && (best == null || kind.score(grid) > best.score(grid))) {
                best = kind;
            }
        }
        return Optional.ofNullable(best);
    }

    private void reportUnits(Grid grid, int row, Map<InputColumn, Found> all) {
        for (Map.Entry<InputColumn, Found> found : all.entrySet()) {
            String unit = found.getValue().match().notUnderstood();
            if (!unit.isEmpty()) {
                InputColumn column = found.getKey();
                findings.error(
                        grid.origin(row, found.getValue().index()),
                        column.unit().isEmpty()
                                ? TableMessages.unknownUnit(unit, column.bareHeader())
                                : TableMessages.unknownUnit(unit, column.bareHeader(), column.unit()));
            }
        }
    }

    private void reportDoubles(Grid grid, int row, Kind kind, NavigableMap<Integer, Cell> cells) {
        for (Map.Entry<Integer, Cell> cell : cells.entrySet()) {
            int index = cell.getKey();
            for (Candidate candidate : candidates(cell.getValue())) {
                if (candidate.schema().equals(kind.schema()) && !kind.uses(index)) {
                    reportDouble(grid, row, index, kind, candidate.match(), cells);
                }
            }
        }
    }

    private void reportDouble(
            Grid grid,
            int row,
            int index,
            Kind kind,
            HeaderIndex.HeaderMatch match,
            NavigableMap<Integer, Cell> cells) {
        Found read = kind.found().get(match.column());
        String header = cells.getOrDefault(index, Cell.BLANK).text();
        if (read == null) {
            return;
        }
        if (read.match().rank() == match.rank()) {
            findings.error(
                    grid.origin(row, index),
                    TableMessages.secondColumn(header, match.column().header()));
        } else if (match.column().kind().isNumber() && !match.column().required()) {
            findings.warning(
                    grid.origin(row, index),
                    TableMessages.otherColumnRead(
                            header,
                            match.column().header(),
                            cells.getOrDefault(read.index(), Cell.BLANK).text()));
        } else if (match.column().required()) {
            findings.note(
                    grid.origin(row, index),
                    TableMessages.otherColumnRead(
                            header,
                            match.column().header(),
                            cells.getOrDefault(read.index(), Cell.BLANK).text()));
        }
    }

    /**
     * The columns that a cell may name, alone or as the end of a header that begins in the row above: "Pack" over
     * "size".
     */
    private List<Candidate> candidates(Grid grid, int row, int index, Cell cell) {
        Cell above = grid.mergedAt(row - 1, index)
                .map(block -> grid.at(block.firstRow(), block.firstColumn()))
                .orElseGet(() -> grid.at(row - 1, index));
        if (above.kind() != Cell.Kind.TEXT || cell.kind() != Cell.Kind.TEXT) {
            return candidates(cell);
        }
        List<Candidate> whole = candidates(Cell.text(above.text() + " " + cell.text()));
        return whole.isEmpty() ? candidates(cell) : whole;
    }

    /** Whether a text is a header of some table, with a unit that is understood. */
    boolean knows(Cell cell) {
        return candidates(cell).stream()
                .anyMatch(candidate -> candidate.match().notUnderstood().isEmpty());
    }

    private List<Candidate> candidates(Cell cell) {
        boolean words = cell.kind() == Cell.Kind.TEXT && cell.text().length() <= LONGEST_HEADER;
        if (!words || !beginnings.mayBeginHeader(cell.text())) {
            return List.of();
        }
        List<Candidate> before = known.get(cell.text());
        if (before != null) {
            return before;
        }
        List<Candidate> found = compare(cell.text());
        if (known.size() < MOST_REMEMBERED) {
            known.put(cell.text(), found);
        }
        return found;
    }

    private List<Candidate> compare(String text) {
        HeaderText header = HeaderText.of(text);
        List<Candidate> all = new ArrayList<>();
        for (Map.Entry<SheetSchema, HeaderIndex> index : indexes.entrySet()) {
            index.getValue().match(header).ifPresent(match -> all.add(new Candidate(index.getKey(), match)));
        }
        return all;
    }

    private record Candidate(SheetSchema schema, HeaderIndex.HeaderMatch match) {}

    private record Found(int index, HeaderIndex.HeaderMatch match) {

        Found better(Found other) {
            return other.match.rank() < match.rank() ? other : this;
        }
    }

    private record Kind(SheetSchema schema, Map<InputColumn, Found> found) {

        boolean isEnough(Grid grid) {
            boolean signed = schema.signatures().stream()
                    .anyMatch(signature -> found.keySet().containsAll(signature));
            return signed || (found.size() >= 2 && isCalled(grid));
        }

        int score(Grid grid) {
            boolean formula = found.containsKey(FormulaSheet.MATERIAL) && found.containsKey(FormulaSheet.LEVEL_OF);
            return found.size() + (isCalled(grid) ? FOR_THE_NAME : 0) + (formula ? FOR_A_FORMULA : 0);
        }

        boolean uses(int index) {
            return found.values().stream().anyMatch(used -> used.index() == index);
        }

        private boolean isCalled(Grid grid) {
            String key = HeaderText.key(grid.title());
            return grid.kind().equals(schema.name())
                    || HeaderText.key(schema.name()).equals(key)
                    || schema.otherNames().stream()
                            .anyMatch(name -> HeaderText.key(name).equals(key));
        }
    }

    /**
     * A row that heads a table.
     *
     * @param schema the kind of table
     * @param row from zero
     * @param topRow the row above, if headers begin there
     * @param firstColumn the first cell of the row that belongs to it
     * @param lastColumn the last cell of the row that belongs to it
     * @param columns the place of each column
     * @param unknown the places of words that are not a header
     */
    record Header(
            SheetSchema schema,
            int row,
            int topRow,
            int firstColumn,
            int lastColumn,
            Map<InputColumn, FoundTable.Place> columns,
            List<Integer> unknown) {

        /** The part of the sheet that the table takes, down to a row. */
        Region region(int lastRow) {
            return new Region(topRow, row, lastRow, firstColumn, lastColumn, unknown);
        }

        boolean overlaps(Header other) {
            return firstColumn <= other.lastColumn && other.firstColumn <= lastColumn;
        }
    }
}
