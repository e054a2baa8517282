package perkilo.xlsx.grid;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The cells of one row as bytes. A long price list has a million cells, and most sheets of a workbook are read only to
 * find that they hold no table; so cells are made on demand.
 *
 * <p>Each cell is its column, its kind and what the kind needs: a number's style and digits, the number of a shared
 * text, or a text.
 */
final class PackedRow {

    /** A number, with its style and its digits. */
    static final int NUMBER = 0;

    /** One of the workbook's texts, by its number. */
    static final int SHARED = 1;

    /** A text. */
    static final int TEXT = 2;

    /** A cell that was made already, by its number. */
    static final int MADE = 3;

    private static final int SEVEN_BITS = 0x7F;
    private static final int MORE = 0x80;

    private byte[] bytes = new byte[512];
    private int length;
    private int count;
    private int last = -1;
    private boolean rising = true;

    /** Makes cells from what was packed. */
    interface Maker {

        /** The cell of a number. */
        Cell number(String digits, int style);

        /** The cell of a text that is stored in the row itself. */
        Cell text(String text);

        /** The cell of a shared text. */
        Cell shared(int number);

        /** A cell that was made already. */
        Cell made(int number);

        /** Keeps a cell that was made already and returns its number. */
        int keep(Cell cell);
    }

    /** Begins another row. */
    void clear() {
        length = 0;
        count = 0;
        last = -1;
        rising = true;
    }

    /** How many cells it holds. */
    int count() {
        return count;
    }

    /** How many bytes it takes. */
    int size() {
        return length;
    }

    /** Whether each cell is to the right of the one before. */
    boolean isRising() {
        return rising;
    }

    /** Adds a number. */
    void number(int column, int style, String digits) {
        begin(column, NUMBER);
        put(style);
        put(digits);
    }

    /** Adds a text. */
    void text(int column, String text) {
        begin(column, TEXT);
        put(text);
    }

    /** Adds a shared text or a cell that was made already, by its number. */
    void known(int column, int kind, int number) {
        begin(column, kind);
        put(number);
    }

    private void begin(int column, int kind) {
        rising &= column > last;
        last = column;
        count++;
        put(column);
        put(kind);
    }

    private void put(int number) {
        room(5);
        int rest = number;
        while (rest > SEVEN_BITS) {
            bytes[length++] = (byte) ((rest & SEVEN_BITS) | MORE);
            rest >>>= 7;
        }
        bytes[length++] = (byte) rest;
    }

    private void put(String text) {
        int characters = text.length();
        if (!isAscii(text)) {
            byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
            put(encoded.length);
            room(encoded.length);
            System.arraycopy(encoded, 0, bytes, length, encoded.length);
            length += encoded.length;
            return;
        }
        put(characters);
        room(characters);
        for (int i = 0; i < characters; i++) {
            bytes[length++] = (byte) text.charAt(i);
        }
    }

    private static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > SEVEN_BITS) {
                return false;
            }
        }
        return true;
    }

    private void room(int more) {
        if (length + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(length + more, bytes.length * 2));
        }
    }

    /** The row's bytes. */
    byte[] bytes() {
        return Arrays.copyOf(bytes, length);
    }

    /** The cells of a packed row, from left to right. */
    static NavigableMap<Integer, Cell> unpacked(byte[] packed, Maker maker) {
        int room = 16;
        char[] columns = new char[room];
        Cell[] cells = new Cell[room];
        int count = 0;
        Cursor cursor = new Cursor(packed);
        while (cursor.next()) {
            if (cursor.column > Character.MAX_VALUE) {
                return tree(packed, maker);
            }
            if (count == room) {
                room *= 2;
                columns = Arrays.copyOf(columns, room);
                cells = Arrays.copyOf(cells, room);
            }
            columns[count] = (char) cursor.column;
            cells[count++] = cursor.cell(maker);
        }
        return RowCells.of(columns, cells, count);
    }

    /** The cells as a tree, for a line of a text file with more columns than a sheet can have. */
    private static NavigableMap<Integer, Cell> tree(byte[] packed, Maker maker) {
        NavigableMap<Integer, Cell> cells = new TreeMap<>();
        Cursor cursor = new Cursor(packed);
        while (cursor.next()) {
            cells.put(cursor.column, cursor.cell(maker));
        }
        return cells;
    }

    /** A cursor over the cells of a packed row. */
    static final class Cursor {

        private final byte[] packed;
        private int at;
        private int column;
        private int kind;
        private int number;
        private int from;
        private int to;

        Cursor(byte[] packed) {
            this.packed = packed;
        }

        /** Goes to the next cell; false if there is none. */
        boolean next() {
            if (at == packed.length) {
                return false;
            }
            column = number();
            kind = number();
            number = kind == TEXT ? 0 : number();
            if (kind == NUMBER || kind == TEXT) {
                int size = number();
                from = at;
                to = at + size;
                at = to;
            }
            return true;
        }

        /** The column of the cell, from zero. */
        int column() {
            return column;
        }

        /** Whether the cell can hold words. */
        boolean mayBeWords() {
            return kind != NUMBER;
        }

        /** The cell. */
        Cell cell(Maker maker) {
            return switch (kind) {
                case NUMBER -> maker.number(string(), number);
                case TEXT -> maker.text(string());
                case SHARED -> maker.shared(number);
                default -> maker.made(number);
            };
        }

        private String string() {
            return new String(packed, from, to - from, StandardCharsets.UTF_8);
        }

        private int number() {
            int value = 0;
            int shift = 0;
            byte next = packed[at++];
            while (next < 0) {
                value |= (next & SEVEN_BITS) << shift;
                shift += 7;
                next = packed[at++];
            }
            return value | (next << shift);
        }
    }
}
