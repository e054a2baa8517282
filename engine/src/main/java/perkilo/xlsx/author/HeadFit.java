package perkilo.xlsx.author;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.ResultSheet.Cell;

/**
 * Widens columns whose head would just fit into one line, from edge to edge: it would touch the next one, and the two
 * would read as one. A head that is plainly longer is broken into lines, and leaves room.
 */
final class HeadFit {

    /** Bold letters and a column's count of characters are about equally wide; fonts differ by this much. */
    private static final double NARROWEST = 0.8;

    /** What must stay free beside a head, in characters. */
    private static final int GAP = 1;

    private HeadFit() {}

    /** The sheet with heads that stand apart. */
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
