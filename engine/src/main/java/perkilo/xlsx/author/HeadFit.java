package perkilo.xlsx.author;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.ResultSheet.Cell;

/**
 * Widens columns whose head fills its line from edge to edge. Without room beside it, two neighbouring heads would read
 * as one. A head that is clearly longer is broken into lines and needs no more room.
 */
final class HeadFit {

    /** The least width of a bold letter, in characters of a column's width; fonts differ. */
    private static final double NARROWEST = 0.8;

    /** The room that must stay free beside a head, in characters. */
    private static final int GAP = 1;

    private HeadFit() {}

    /** The sheet with room between its heads. */
    static ResultSheet of(ResultSheet sheet) {
        SortedMap<Integer, Integer> widths = new TreeMap<>(sheet.columnWidths());
        for (SortedMap<Integer, Cell> row : sheet.cells().values()) {
            for (Map.Entry<Integer, Cell> entry : row.entrySet()) {
                Cell cell = entry.getValue();
                if (cell.look() == Look.HEADER && cell.content() instanceof ResultSheet.Text text) {
                    widen(widths, entry.getKey(), text.text().length());
                }
            }
        }
        return widths.equals(sheet.columnWidths()) ? sheet : sheet.withColumnWidths(widths);
    }

    private static void widen(SortedMap<Integer, Integer> widths, int column, int length) {
        int present = widths.getOrDefault(column, TextFit.USUAL_WIDTH);
        if (length * NARROWEST <= present && length + GAP > present) {
            widths.put(column, length + GAP);
        }
    }
}
