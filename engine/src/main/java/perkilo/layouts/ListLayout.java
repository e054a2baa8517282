package perkilo.layouts;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import perkilo.origin.Origin;
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
     * What a column without a heading is called.
     *
     * @param column from zero
     * @return such as {@code Column C}
     */
    public static String withoutHeading(int column) {
        String cell = Origin.ofCell("", "", 0, column).cell();
        return "Column " + cell.substring(0, cell.length() - 1);
    }

    /** The layout of a sheet without a row of headings; each column is called by its letters. */
    public static ListLayout withoutHeadings(Grid grid) {
        Map<Integer, String> headers = new TreeMap<>();
        for (int row : grid.rows().numbers()) {
            grid.row(row).keySet().forEach(column -> headers.putIfAbsent(column, withoutHeading(column)));
        }
        return new ListLayout(grid, -1, -1, headers, Map.of());
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
