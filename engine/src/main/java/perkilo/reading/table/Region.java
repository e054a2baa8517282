package perkilo.reading.table;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The part of a sheet that a table takes, and what became of its rows.
 *
 * <p>Several threads may read one table: what they note of a row is always the same.
 */
final class Region {

    /** What became of a row. */
    enum RowState {
        UNKNOWN,
        READ,
        TOTAL,
        WITHOUT_KEY,
        NOTE,
        STRUCK
    }

    private final int topRow;
    private final int headerRow;
    private final int firstColumn;
    private final int lastColumn;
    private final List<Integer> unknown;
    private final @Nullable RowState[] states;
    private final BitSet struckRows = new BitSet();
    private final BitSet nearHeaders = new BitSet();
    private final NavigableMap<Integer, PriceLine> priceLines = new TreeMap<>();
    private final BitSet arrangedRows = new BitSet();
    private final Map<Integer, String> arrangedUses = new HashMap<>();

    /**
     * A region of which nothing is noted.
     *
     * @param topRow the first row of its headers, from zero
     * @param headerRow the last row of its headers
     * @param lastRow the last row that may belong to it
     * @param firstColumn the first column with a header
     * @param lastColumn the last column with a header
     * @param unknown the columns with a header that is not recognised
     */
    Region(int topRow, int headerRow, int lastRow, int firstColumn, int lastColumn, List<Integer> unknown) {
        this.topRow = topRow;
        this.headerRow = headerRow;
        this.firstColumn = firstColumn;
        this.lastColumn = lastColumn;
        this.unknown = List.copyOf(unknown);
        this.states = new @Nullable RowState[Math.max(0, lastRow - headerRow)];
    }

    int topRow() {
        return topRow;
    }

    int firstColumn() {
        return firstColumn;
    }

    int lastColumn() {
        return lastColumn;
    }

    List<Integer> unknown() {
        return unknown;
    }

    /** Notes which rows of an arranged part were read, and what its columns are read as. */
    void arranged(BitSet rows, Map<Integer, String> uses) {
        arrangedRows.or(rows);
        arrangedUses.putAll(uses);
    }

    /** The rows of an arranged part that were read, lines above its headers included. */
    BitSet arrangedRows() {
        return arrangedRows;
    }

    /** What the columns of an arranged part are read as. */
    Map<Integer, String> arrangedUses() {
        return arrangedUses;
    }

    /** Notes what became of a row. */
    void note(int row, RowState state) {
        states[row - headerRow - 1] = state;
    }

    /** What became of a row below the headers. */
    RowState state(int row) {
        RowState state = states[row - headerRow - 1];
        return state == null ? RowState.UNKNOWN : state;
    }

    /** The rows that are struck through. */
    BitSet struckRows() {
        return struckRows;
    }

    /** The columns whose headers resemble one of ours, which was reported. */
    BitSet nearHeaders() {
        return nearHeaders;
    }

    /** The lines that say what prices below them are in, by their rows; those above the headers count at these. */
    NavigableMap<Integer, PriceLine> priceLines() {
        return priceLines;
    }

    /** The unit of the prices of a row: that of their header, with what a line above adds. */
    String priceUnit(int row, String ofHeader) {
        Map.Entry<Integer, PriceLine> line = priceLines.floorEntry(row);
        return line == null ? ofHeader : line.getValue().addedTo(ofHeader);
    }
}
