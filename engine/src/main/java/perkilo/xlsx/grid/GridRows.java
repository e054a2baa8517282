package perkilo.xlsx.grid;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NoSuchElementException;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * The rows of a grid by their numbers, from zero. Blank rows are left out. A row's cells are made on demand, and only
 * the last row used is remembered.
 */
public final class GridRows {

    private static final int[] NONE = {};

    private final int[] numbers;
    private final byte[][] packed;
    private final int[] lines;
    private final PackedRow.Maker maker;

    /** Replaced as a whole, so that several threads may read. */
    private Recent recent = new Recent(-1, new TreeMap<>());

    private record Recent(int number, NavigableMap<Integer, Cell> cells) {}

    private GridRows(int[] numbers, byte[][] packed, int[] lines, PackedRow.Maker maker) {
        this.numbers = numbers;
        this.packed = packed;
        this.lines = lines;
        this.maker = maker;
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return numbers.length == 0;
    }

    /** The number of the first row. */
    public int first() {
        return number(0);
    }

    /** The number of the last row. */
    public int last() {
        return number(numbers.length - 1);
    }

    private int number(int place) {
        if (numbers.length == 0) {
            throw new NoSuchElementException("there is no row");
        }
        return numbers[place];
    }

    /** The numbers of all rows, ascending. */
    public int[] numbers() {
        return numbers.clone();
    }

    /** The numbers of the rows between two rows, both excluded, ascending. */
    public int[] between(int above, int below) {
        int from = placeFrom(above + 1);
        int to = placeFrom(below);
        return from < to ? Arrays.copyOfRange(numbers, from, to) : NONE;
    }

    /** The numbers of the rows below a row, ascending. */
    public int[] below(int above) {
        return between(above, Integer.MAX_VALUE);
    }

    /** The first of these rows alone. */
    GridRows first(int most) {
        if (most >= numbers.length) {
            return this;
        }
        int[] some = lines.length == 0 ? NONE : Arrays.copyOf(lines, most);
        return new GridRows(Arrays.copyOf(numbers, most), Arrays.copyOf(packed, most), some, maker);
    }

    /** The rows from one to another, both included. */
    GridRows part(int first, int last) {
        int from = placeFrom(first);
        int to = Math.max(from, placeFrom(last + 1));
        int[] some = lines.length == 0 ? NONE : Arrays.copyOfRange(lines, from, to);
        return new GridRows(Arrays.copyOfRange(numbers, from, to), Arrays.copyOfRange(packed, from, to), some, maker);
    }

    /** The same rows with other cells in some places; a row stays even if all its cells are blank now. */
    GridRows with(Map<Integer, Map<Integer, Cell>> others) {
        byte[][] all = packed.clone();
        others.forEach((number, cells) -> {
            int place = Arrays.binarySearch(numbers, number);
            if (place >= 0) {
                NavigableMap<Integer, Cell> row = new TreeMap<>(PackedRow.unpacked(packed[place], maker));
                row.putAll(cells);
                PackedRow again = new PackedRow();
                row.forEach((column, cell) -> {
                    if (!cell.isBlank()) {
                        again.known(column, PackedRow.MADE, maker.keep(cell));
                    }
                });
                all[place] = again.bytes();
            }
        });
        return new GridRows(numbers, all, lines, maker);
    }

    private int placeFrom(int number) {
        int place = Arrays.binarySearch(numbers, number);
        return place < 0 ? -place - 1 : place;
    }

    /** The cells of a row by their columns, from zero, none blank; empty if there is no such row. */
    public NavigableMap<Integer, Cell> at(int number) {
        Recent known = recent;
        if (known.number == number) {
            return known.cells;
        }
        int place = Arrays.binarySearch(numbers, number);
        if (place < 0) {
            return new TreeMap<>();
        }
        NavigableMap<Integer, Cell> cells = PackedRow.unpacked(packed[place], maker);
        recent = new Recent(number, cells);
        return cells;
    }

    /** Passes the cells of a row that can hold words to a consumer; no others are made. */
    public void words(int number, Consumer<Cell> look) {
        int place = Arrays.binarySearch(numbers, number);
        if (place >= 0) {
            PackedRow.Cursor cursor = new PackedRow.Cursor(packed[place]);
            while (cursor.next()) {
                if (cursor.mayBeWords()) {
                    look.accept(cursor.cell(maker));
                }
            }
        }
    }

    /** Whether a row has a cell in some columns; no cell is made. */
    public boolean holdsAny(int number, BitSet columns) {
        int place = Arrays.binarySearch(numbers, number);
        PackedRow.Cursor cursor = new PackedRow.Cursor(place < 0 ? new byte[0] : packed[place]);
        while (cursor.next()) {
            if (columns.get(cursor.column())) {
                return true;
            }
        }
        return false;
    }

    /** Whether a row has a cell that is stored as a number; no cell is made. */
    public boolean holdsNumber(int number) {
        int place = Arrays.binarySearch(numbers, number);
        PackedRow.Cursor cursor = new PackedRow.Cursor(place < 0 ? new byte[0] : packed[place]);
        while (cursor.next()) {
            if (!cursor.mayBeWords()) {
                return true;
            }
        }
        return false;
    }

    /** Adds the columns of a row's cells, none blank, to a set; no cell is made. */
    public void addColumns(int number, BitSet columns) {
        int place = Arrays.binarySearch(numbers, number);
        if (place >= 0) {
            PackedRow.Cursor cursor = new PackedRow.Cursor(packed[place]);
            while (cursor.next()) {
                columns.set(cursor.column());
            }
        }
    }

    /** Whether a row has at most a number of cells, and has one; no cell is made. */
    public boolean isShort(int number, int most) {
        int place = Arrays.binarySearch(numbers, number);
        PackedRow.Cursor cursor = new PackedRow.Cursor(place < 0 ? new byte[0] : packed[place]);
        int count = 0;
        while (count <= most && cursor.next()) {
            count++;
        }
        return count > 0 && count <= most;
    }

    /** Whether a cell of a row in some columns can hold words; no cell is made. */
    public boolean mayHoldWords(int number, BitSet columns) {
        int place = Arrays.binarySearch(numbers, number);
        PackedRow.Cursor cursor = new PackedRow.Cursor(place < 0 ? new byte[0] : packed[place]);
        while (cursor.next()) {
            if (cursor.mayBeWords() && columns.get(cursor.column())) {
                return true;
            }
        }
        return false;
    }

    /** The line of a text file that a row starts at; zero for a sheet. */
    int line(int number) {
        if (lines.length == 0) {
            return 0;
        }
        int place = Arrays.binarySearch(numbers, number);
        return place < 0 ? number + 1 : lines[place];
    }

    /** A builder that collects rows. */
    static final class Builder {

        private final PackedRow.Maker maker;
        private final TreeMap<Integer, byte[]> late = new TreeMap<>();
        private int[] numbers = new int[64];
        private byte[][] packed = new byte[64][];
        private int[] lines = NONE;
        private int count;

        /** No rows yet. */
        Builder(PackedRow.Maker maker) {
            this.maker = maker;
        }

        /** Adds a row that starts at a line of a text file, below all others. */
        void add(int number, int line, PackedRow row) {
            if (count >= lines.length) {
                lines = Arrays.copyOf(lines, Math.max(64, count * 2));
            }
            lines[count] = line;
            add(number, row);
        }

        /**
         * Adds a row at any position. If a cell occurs twice, which one a spreadsheet shows is undefined, so it becomes
         * an error.
         */
        void add(int number, PackedRow row) {
            boolean below = count == 0 || number > numbers[count - 1];
            if (below && row.isRising()) {
                append(number, row.bytes());
            } else {
                merge(number, row);
            }
        }

        private void append(int number, byte[] row) {
            if (count == numbers.length) {
                numbers = Arrays.copyOf(numbers, count * 2);
                packed = Arrays.copyOf(packed, count * 2);
            }
            numbers[count] = number;
            packed[count++] = row;
        }

        private void merge(int number, PackedRow row) {
            TreeMap<Integer, Cell> all = new TreeMap<>();
            int place = Arrays.binarySearch(numbers, 0, count, number);
            byte[] earlier = place >= 0 ? packed[place] : late.get(number);
            if (earlier != null) {
                all.putAll(PackedRow.unpacked(earlier, maker));
            }
            PackedRow.Cursor cursor = new PackedRow.Cursor(row.bytes());
            while (cursor.next()) {
                all.merge(cursor.column(), cursor.cell(maker), (one, other) -> Cell.error(CellFaults.twice()));
            }
            byte[] merged = repacked(all);
            if (place >= 0) {
                packed[place] = merged;
            } else {
                late.put(number, merged);
            }
        }

        private byte[] repacked(Map<Integer, Cell> cells) {
            PackedRow row = new PackedRow();
            cells.forEach((column, cell) -> row.known(column, PackedRow.MADE, maker.keep(cell)));
            return row.bytes();
        }

        /** All rows. */
        GridRows rows() {
            if (late.isEmpty()) {
                int[] own = lines.length == 0 ? NONE : Arrays.copyOf(lines, count);
                return new GridRows(Arrays.copyOf(numbers, count), Arrays.copyOf(packed, count), own, maker);
            }
            for (int i = 0; i < count; i++) {
                late.put(numbers[i], packed[i]);
            }
            int[] all = late.keySet().stream().mapToInt(number -> number).toArray();
            return new GridRows(all, late.values().toArray(new byte[0][]), NONE, maker);
        }
    }
}
