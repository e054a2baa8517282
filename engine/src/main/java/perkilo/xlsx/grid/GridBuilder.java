package perkilo.xlsx.grid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import perkilo.origin.Origin;

/** Arranges cells of a person's sheet in another way; each cell keeps the place where the person typed it. */
public final class GridBuilder {

    private final Grid from;
    private final String title;
    private final Places places;
    private final Kept kept = new Kept();
    private final GridRows.Builder rows = new GridRows.Builder(kept);
    private NavigableMap<Integer, Cell> current = new TreeMap<>();
    private int row = -1;

    /**
     * An empty grid.
     *
     * @param from the person's sheet
     * @param title the name by which its table is recognised
     */
    public GridBuilder(Grid from, String title) {
        this.from = from;
        this.title = title;
        this.places = new Places(from.origin());
    }

    /**
     * Begins the next row.
     *
     * @param place what stands for the row in messages
     */
    public void row(Origin place) {
        row(row + 1, place);
    }

    /** Begins a row below the others, with the number that it has on the person's sheet. */
    public void row(int number, Origin place) {
        keep();
        row = number;
        places.put(row, place);
    }

    /** Puts a cell of the person's sheet into the row, as it was typed. */
    public void typed(int column, int fromRow, int fromColumn) {
        typed(column, from.at(fromRow, fromColumn), from.origin(fromRow, fromColumn));
    }

    /**
     * Puts a cell into the row as it was typed somewhere; a blank one too, so that what is typed there later counts.
     */
    public void typed(int column, Cell cell, Origin place) {
        put(column, cell, place, true);
    }

    /** Puts a value into the row that a person's cell says, but is not alone in that cell. */
    public void said(int column, Cell cell, Origin place) {
        put(column, cell, place, false);
    }

    private void put(int column, Cell cell, Origin place, boolean asTyped) {
        places.put(row, column, place, asTyped);
        if (!cell.isBlank()) {
            current.put(column, cell);
        }
    }

    private void keep() {
        if (!current.isEmpty()) {
            PackedRow packed = new PackedRow();
            current.forEach((column, cell) -> packed.known(column, PackedRow.MADE, kept.keep(cell)));
            rows.add(row, packed);
            current = new TreeMap<>();
        }
    }

    /** The grid; nothing in it is merged. */
    public Grid grid() {
        keep();
        return new Grid(
                from.file(),
                from.sheet(),
                title,
                rows.rows(),
                new MergedBlocks(List.of()),
                new BitSet(),
                from.ofBook(),
                Grid.Aside.NONE,
                "",
                places);
    }

    /** Cells that were made already. */
    private static final class Kept implements PackedRow.Maker {

        private final List<Cell> cells = new ArrayList<>();

        @Override
        public Cell number(String digits, int style) {
            throw new AssertionError(digits);
        }

        @Override
        public Cell text(String text) {
            return Cell.text(text);
        }

        @Override
        public Cell shared(int number) {
            return cells.get(number);
        }

        @Override
        public Cell made(int number) {
            return cells.get(number);
        }

        @Override
        public int keep(Cell cell) {
            cells.add(cell);
            return cells.size() - 1;
        }
    }
}
