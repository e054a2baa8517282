package perkilo.workbook.lists;

import java.util.Map;
import perkilo.workbook.read.grid.Cell;
import perkilo.workbook.read.grid.Grid;

/**
 * Where a list's table stands on a sheet, and what its headers say.
 *
 * @param grid the sheet
 * @param firstHeader the first row of headers, from zero
 * @param lastHeader the last row of headers, from zero
 * @param headers what is written above each column
 * @param readings what is understood of it; a column that is not understood is missing
 */
record ListLayout(
        Grid grid,
        int firstHeader,
        int lastHeader,
        Map<Integer, String> headers,
        Map<Integer, HeaderReading> readings) {

    /** Whether a row repeats the headers, as lists do on every page. */
    boolean repeatsHeaders(int row) {
        int same = 0;
        for (Map.Entry<Integer, Cell> cell : grid.row(row).entrySet()) {
            Cell above = grid.at(lastHeader, cell.getKey());
            if (!above.text().equals(cell.getValue().text())) {
                return false;
            }
            same++;
        }
        return same > 1;
    }
}
