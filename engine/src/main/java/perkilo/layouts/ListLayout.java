package perkilo.layouts;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Where a table of a list is on a sheet, and what its headers say.
 *
 * @param grid the sheet
 * @param above the row above the first line that belongs to the table; -1 for the top of the sheet
 * @param firstHeader the first row of headers, from zero
 * @param lastHeader the last row of headers, from zero
 * @param end the row below the table: the first one that belongs to another, or the greatest number
 * @param headers what is written above each column
 * @param readings what each header means; a column that is not understood is missing
 * @param pairs for each column of prices that has its own column of quantities: that column
 * @param others the sheets of the file that hold no table
 */
public record ListLayout(
        Grid grid,
        int above,
        int firstHeader,
        int lastHeader,
        int end,
        Map<Integer, String> headers,
        Map<Integer, HeaderReading> readings,
        Map<Integer, Integer> pairs,
        List<Grid> others) {

    /** The numbers of the rows below the headers. */
    public int[] rows() {
        return grid.rows().between(lastHeader, end);
    }

    ListLayout between(int newAbove, int newEnd, List<Grid> newOthers) {
        return new ListLayout(
                grid, newAbove, firstHeader, lastHeader, newEnd, headers, readings, pairs, List.copyOf(newOthers));
    }

    /**
     * Whether a row repeats the headers, as lists do on every page.
     *
     * @param header the last row of headers
     */
    public boolean repeatsHeaders(NavigableMap<Integer, Cell> row, NavigableMap<Integer, Cell> header) {
        if (row.size() < 2 || !isSame(row, header, row.firstKey())) {
            return false;
        }
        return row.keySet().stream().allMatch(column -> isSame(row, header, column));
    }

    private static boolean isSame(NavigableMap<Integer, Cell> row, NavigableMap<Integer, Cell> header, Integer column) {
        return header.getOrDefault(column, Cell.BLANK)
                .text()
                .equals(row.getOrDefault(column, Cell.BLANK).text());
    }
}
