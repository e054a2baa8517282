package perkilo.layouts;

import java.util.Map;
import java.util.NavigableMap;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Where a list's table is on a sheet, and what its headers say.
 *
 * @param grid the sheet
 * @param firstHeader the first row of headers, from zero
 * @param lastHeader the last row of headers, from zero
 * @param headers what is written above each column
 * @param readings what each header means; a column that is not understood is missing
 */
public record ListLayout(
        Grid grid,
        int firstHeader,
        int lastHeader,
        Map<Integer, String> headers,
        Map<Integer, HeaderReading> readings) {

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
