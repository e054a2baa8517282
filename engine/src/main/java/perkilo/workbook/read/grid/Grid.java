package perkilo.workbook.read.grid;

import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import perkilo.origin.Origin;

/**
 * The cells of one sheet, or of one text file.
 *
 * @param file the file's name without its folder
 * @param sheet the sheet as its tab shows it; empty for a text file
 * @param title what it is called when a table is recognised: the sheet's name, or what stands for it in a text file
 * @param cells by row, then column, both from zero; blank cells and hidden rows are left out
 * @param merged blocks of cells that were merged
 * @param lines for a text file the line that each row starts at; empty for a sheet
 * @param ofBook whether formulas in the results can refer to its cells
 */
public record Grid(
        String file,
        String sheet,
        String title,
        NavigableMap<Integer, NavigableMap<Integer, Cell>> cells,
        List<Block> merged,
        SortedMap<Integer, Integer> lines,
        boolean ofBook) {

    private static final int LETTERS = 26;

    public Grid {
        merged = List.copyOf(merged);
    }

    /** The cell at a position; blank where there is none. */
    public Cell at(int row, int column) {
        return row(row).getOrDefault(column, Cell.BLANK);
    }

    /** The cells of a row that are not blank, by column. */
    public NavigableMap<Integer, Cell> row(int row) {
        return cells.getOrDefault(row, Collections.emptyNavigableMap());
    }

    /** The merged block that a position belongs to. */
    public Optional<Block> mergedAt(int row, int column) {
        return merged.stream().filter(block -> block.contains(row, column)).findFirst();
    }

    /** The place of a cell as a person would point to it. */
    public Origin origin(int row, int column) {
        Integer line = lines.get(row);
        String cell = line != null ? "line " + line : columnName(column) + (row + 1);
        return new Origin(file, sheet, cell);
    }

    /** The place of the whole sheet or file. */
    public Origin origin() {
        return new Origin(file, sheet, "");
    }

    private static String columnName(int column) {
        String rest = column >= LETTERS ? columnName(column / LETTERS - 1) : "";
        return rest + (char) ('A' + column % LETTERS);
    }

    /**
     * A block of cells that were merged into one; both ends belong to it.
     *
     * @param firstRow from zero
     * @param lastRow from zero
     * @param firstColumn from zero
     * @param lastColumn from zero
     */
    public record Block(int firstRow, int lastRow, int firstColumn, int lastColumn) {

        /** Whether a position is inside. */
        public boolean contains(int row, int column) {
            return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
        }
    }
}
