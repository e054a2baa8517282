package perkilo.sheet;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.ResultSheet.Cell;

/**
 * Fills a table's empty cells with blank ones that carry its border lines, so that each row looks complete.
 *
 * <p>A table begins with a row of heads. The rows that follow without a gap and begin in the first column belong to it;
 * each is as wide as the heads.
 */
final class TableRules {

    private final SortedMap<Integer, SortedMap<Integer, Cell>> cells;
    private @Nullable SortedMap<Integer, Cell> heads;
    private int lastRow;

    private TableRules(SortedMap<Integer, SortedMap<Integer, Cell>> cells) {
        this.cells = cells;
    }

    /** The same cells, plus blank ones in the gaps of tables. */
    static SortedMap<Integer, SortedMap<Integer, Cell>> drawn(SortedMap<Integer, SortedMap<Integer, Cell>> cells) {
        return new TableRules(cells).drawn();
    }

    private SortedMap<Integer, SortedMap<Integer, Cell>> drawn() {
        SortedMap<Integer, SortedMap<Integer, Cell>> drawn = new TreeMap<>();
        for (Map.Entry<Integer, SortedMap<Integer, Cell>> row : cells.entrySet()) {
            drawn.put(row.getKey(), drawn(row.getKey(), row.getValue()));
        }
        return drawn;
    }

    private SortedMap<Integer, Cell> drawn(int row, SortedMap<Integer, Cell> filled) {
        SortedMap<Integer, Cell> table = heads;
        boolean follows = table != null && row == lastRow + 1;
        lastRow = row;
        Cell first = requireNonNull(filled.get(filled.firstKey()));
        if (first.look() == Look.HEADER) {
            heads = headsOf(filled);
            return filled;
        }
        if (table == null || !follows || !filled.firstKey().equals(table.firstKey()) || !isRuled(first.look())) {
            heads = null;
            return filled;
        }
        return through(table.lastKey(), filled, first.look() == Look.TOTAL ? Look.TOTAL : Look.PLAIN);
    }

    private static SortedMap<Integer, Cell> headsOf(SortedMap<Integer, Cell> row) {
        SortedMap<Integer, Cell> heads = new TreeMap<>();
        for (Map.Entry<Integer, Cell> cell : row.entrySet()) {
            if (cell.getValue().look() == Look.HEADER) {
                heads.put(cell.getKey(), cell.getValue());
            }
        }
        return heads;
    }

    private static boolean isRuled(Look look) {
        return switch (look) {
            case LABEL, PLAIN, TOTAL, ERROR, WARNING, NOTICE -> true;
            case TITLE, ANSWER, SECTION, HEADER, CHOICE, FILL_IN, KEY, HINT, LETTER -> false;
        };
    }

    private static SortedMap<Integer, Cell> through(int lastColumn, SortedMap<Integer, Cell> filled, Look look) {
        List<Integer> missing = new ArrayList<>();
        for (int column = filled.firstKey() + 1; column <= lastColumn; column++) {
            if (!filled.containsKey(column)) {
                missing.add(column);
            }
        }
        if (missing.isEmpty()) {
            return filled;
        }
        SortedMap<Integer, Cell> row = new TreeMap<>(filled);
        for (int column : missing) {
            row.put(column, new Cell(new ResultSheet.Blank(), look, NumberFormat.GENERAL, null));
        }
        return row;
    }
}
