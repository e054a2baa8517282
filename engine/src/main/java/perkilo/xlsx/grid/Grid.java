package perkilo.xlsx.grid;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;

/**
 * The cells of one sheet, or of one text file.
 *
 * @param file the file's name without its folder
 * @param sheet the sheet as its tab shows it; empty for a text file
 * @param title the name by which its table is recognised: the sheet's name, or its equivalent in a text file
 * @param rows its rows; blank cells and hidden rows are left out
 * @param merged blocks of cells that were merged
 * @param hiddenColumns the hidden columns, from zero
 * @param ofBook whether formulas in the results can refer to its cells
 * @param aside what is shown in another way than other cells
 * @param kind the kind of table that the person says it holds, such as {@code Formula}; empty if they do not say
 * @param places where its cells are on the person's sheet, if it was arranged from one; null for a sheet as it is
 */
public record Grid(
        String file,
        String sheet,
        String title,
        GridRows rows,
        MergedBlocks merged,
        BitSet hiddenColumns,
        boolean ofBook,
        Aside aside,
        String kind,
        @Nullable Places places) {

    /** A grid in which nothing is struck through, and no row is hidden. */
    public Grid(
            String file,
            String sheet,
            String title,
            GridRows rows,
            MergedBlocks merged,
            BitSet hiddenColumns,
            boolean ofBook) {
        this(file, sheet, title, rows, merged, hiddenColumns, ofBook, Aside.NONE);
    }

    Grid(
            String file,
            String sheet,
            String title,
            GridRows rows,
            MergedBlocks merged,
            BitSet hiddenColumns,
            boolean ofBook,
            Aside aside) {
        this(file, sheet, title, rows, merged, hiddenColumns, ofBook, aside, "", null);
    }

    /** A grid of a text file: nothing merged, nothing hidden. */
    static Grid ofText(String file, String title, GridRows rows) {
        return new Grid(file, "", title, rows, new MergedBlocks(List.of()), new BitSet(), false);
    }

    /** The cell at a position; blank if there is none. */
    public Cell at(int row, int column) {
        return rows.at(row).getOrDefault(column, Cell.BLANK);
    }

    /** The cells of a row that are not blank, by column. */
    public NavigableMap<Integer, Cell> row(int row) {
        return rows.at(row);
    }

    /** The merged block that contains a position; empty if none does. */
    public Optional<Block> mergedAt(int row, int column) {
        return merged.at(row, column);
    }

    /** The place of a cell, as messages show it; for an arranged cell the place where the person typed it. */
    public Origin origin(int row, int column) {
        if (places != null) {
            return places.of(row, column);
        }
        int line = rows.line(row);
        return line > 0 ? Origin.ofLine(file, sheet, line) : Origin.ofCell(file, sheet, row, column);
    }

    /** Whether formulas in the results can refer to a cell: one of a workbook, where a person typed it. */
    public boolean isLive(int row, int column) {
        return ofBook && (places == null || places.isLive(row, column));
    }

    /** Whether it was arranged from a sheet that is laid out in another way. */
    public boolean isArranged() {
        return places != null;
    }

    /**
     * The place that stands for a row of an arranged sheet, such as the cell of its price.
     *
     * @return empty if the sheet is as the person laid it out
     */
    public Optional<Origin> rowPlace(int row) {
        return places == null ? Optional.empty() : Optional.of(places.of(row));
    }

    /** Its first rows alone. */
    public Grid head(int most) {
        return new Grid(file, sheet, title, rows.first(most), merged, hiddenColumns, ofBook, aside, kind, places);
    }

    /** A part of the sheet: the cells of a block, each at its place. */
    public Grid part(Block block) {
        Grid cut = new Grid(
                file,
                sheet,
                title,
                rows.part(block.firstRow(), block.lastRow()),
                merged,
                hiddenColumns,
                ofBook,
                aside,
                kind,
                places);
        Map<Integer, Map<Integer, Cell>> outside = new HashMap<>();
        for (int row : cut.rows.numbers()) {
            cut.row(row).keySet().stream()
                    .filter(column -> column < block.firstColumn() || column > block.lastColumn())
                    .forEach(column ->
                            outside.computeIfAbsent(row, any -> new HashMap<>()).put(column, Cell.BLANK));
        }
        return cut.with(outside);
    }

    /** The same sheet with other cells in some places, or blank ones; each place stays where it is. */
    public Grid with(Map<Integer, Map<Integer, Cell>> others) {
        return others.isEmpty()
                ? this
                : new Grid(file, sheet, title, rows.with(others), merged, hiddenColumns, ofBook, aside, kind, places);
    }

    /** The same sheet by another title. */
    public Grid titled(String other) {
        return new Grid(file, sheet, other, rows, merged, hiddenColumns, ofBook, aside, kind, places);
    }

    /** The same sheet, of which the person says which kind of table it holds. */
    public Grid meant(String table) {
        return new Grid(file, sheet, title, rows, merged, hiddenColumns, ofBook, aside, table, places);
    }

    /** Whether it may hold a kind of table: any, unless the person says which. */
    public boolean mayHold(String table) {
        return kind.isEmpty() || kind.equals(table);
    }

    /** The place of the whole sheet or file. */
    public Origin origin() {
        return new Origin(file, sheet, "");
    }

    /**
     * Cells that a person sees in another way.
     *
     * @param hiddenRows rows that hold something and are hidden, from zero; they are not among the rows
     * @param struck the columns of the cells that are struck through, by row, both from zero
     */
    public record Aside(BitSet hiddenRows, Map<Integer, BitSet> struck) {

        /** Nothing of the kind. */
        public static final Aside NONE = new Aside(new BitSet(), Map.of());

        /** Whether a cell is struck through. */
        public boolean isStruck(int row, int column) {
            BitSet columns = struck.isEmpty() ? null : struck.get(row);
            return columns != null && columns.get(column);
        }
    }

    /**
     * A block of cells that were merged into one; both ends included.
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
