package perkilo.layouts;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import perkilo.origin.Origin;
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

    /** The same table on a sheet of which it was found in the first rows. */
    public ListLayout on(Grid whole) {
        return new ListLayout(
                whole, -1, firstHeader, lastHeader, Integer.MAX_VALUE, headers, readings, pairs, List.of());
    }

    /** The same table with sheets that may say something of it, though they hold none. */
    public ListLayout with(List<Grid> otherSheets) {
        return between(above, end, otherSheets);
    }

    ListLayout between(int newAbove, int newEnd, List<Grid> newOthers) {
        return new ListLayout(
                grid, newAbove, firstHeader, lastHeader, newEnd, headers, readings, pairs, List.copyOf(newOthers));
    }

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
        return new ListLayout(grid, -1, -1, -1, Integer.MAX_VALUE, headers, Map.of(), Map.of(), List.of());
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
