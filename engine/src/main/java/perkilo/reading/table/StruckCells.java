package perkilo.reading.table;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import perkilo.origin.Origin;
import perkilo.schema.InputColumn;
import perkilo.xlsx.grid.Grid;

/**
 * Cells of a table that are struck through. A row whose name or main value is struck through is left out; other cells
 * are read, with a warning.
 */
final class StruckCells {

    private final FoundTable table;
    private final Findings findings;

    StruckCells(FoundTable table, Findings findings) {
        this.table = table;
        this.findings = findings;
    }

    /** Notes which rows are left out, and warns of them. */
    void find() {
        Grid grid = table.grid();
        if (grid.aside().struck().isEmpty()) {
            return;
        }
        BitSet main = columns(true);
        BitSet others = columns(false);
        BitSet rows = table.region().struckRows();
        Origin firstRow = null;
        Origin firstCell = null;
        int cells = 0;
        for (Map.Entry<Integer, BitSet> struck : new TreeMap<>(grid.aside().struck()).entrySet()) {
            int row = struck.getKey();
            if (row <= table.headerRow() || row > table.lastRow()) {
                continue;
            }
            BitSet here = new BitSet();
            grid.rows().addColumns(row, here);
            here.and(struck.getValue());
            if (here.intersects(main)) {
                rows.set(row);
                here.and(main);
                firstRow = firstRow == null ? grid.origin(row, here.nextSetBit(0)) : firstRow;
                continue;
            }
            here.and(others);
            cells += here.cardinality();
            firstCell = firstCell == null && !here.isEmpty() ? grid.origin(row, here.nextSetBit(0)) : firstCell;
        }
        if (firstRow != null) {
            findings.warning(firstRow, TableMessages.struckRows(rows.cardinality(), SheetLines.rows(rows)));
        }
        if (firstCell != null) {
            findings.warning(firstCell, TableMessages.struckCells(cells));
        }
    }

    /** The columns that name a row or that it cannot do without, or all others. */
    private BitSet columns(boolean main) {
        Set<InputColumn> needed = new HashSet<>(table.schema().keys());
        List<InputColumn> required = table.schema().required();
        needed.addAll(required);
        BitSet columns = new BitSet();
        table.columns().forEach((column, place) -> {
            if (needed.contains(column) == main) {
                columns.set(place.index());
            }
        });
        return columns;
    }
}
