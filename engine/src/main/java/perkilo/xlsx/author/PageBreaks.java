package perkilo.xlsx.author;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Chart;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.ResultSheet.Cell;

/**
 * The rows at which a sheet begins new pages in print: where the sheet asks for it, and before a part that would cross
 * the end of a page although one page can hold it. If no page can hold a part, its first rows stay with its heading. A
 * full page also gets an explicit break, so that all later pages end where they are expected to.
 *
 * <p>A part runs from its heading to the next heading; a chart is a part of its own. A group of parts under a common
 * name, such as everything about one run, is kept on one page if possible, and otherwise part by part.
 */
final class PageBreaks {

    /** Rows of a long part that stay with its heading: the heads of its columns and two more. */
    private static final int FIRST_ROWS = 3;

    /** About the most breaks that office suites accept; from memory. */
    private static final int MOST = 1000;

    private final ResultSheet sheet;
    private final TextFit fit;
    private final double pagePoints;
    private final TreeSet<Integer> breaks;
    private final TreeSet<Integer> headings = new TreeSet<>();
    private final TreeSet<Integer> names = new TreeSet<>();
    private final TreeSet<Integer> filled = new TreeSet<>();

    private PageBreaks(ResultSheet sheet, double pagePoints) {
        this.sheet = sheet;
        this.fit = new TextFit(sheet);
        this.pagePoints = pagePoints;
        this.breaks = new TreeSet<>(sheet.layout().pageBreaksBefore());
        filled.addAll(sheet.cells().keySet());
        for (Chart chart : sheet.charts()) {
            headings.add(chart.place().top());
            filled.add(chart.place().bottom());
        }
        for (int row : sheet.cells().keySet()) {
            if (look(row) == Look.SECTION) {
                headings.add(row);
                if (look(row - 1) == Look.ANSWER) {
                    names.add(row - 1);
                }
            }
        }
    }

    /**
     * The rows that begin a page.
     *
     * @param pagePoints the height of a page in points, at the scale that the sheet is printed in
     */
    static List<Integer> of(ResultSheet sheet, double pagePoints) {
        return new PageBreaks(sheet, pagePoints).rows();
    }

    private List<Integer> rows() {
        if (!headings.isEmpty()) {
            double used = 0;
            for (int row = 0; row <= filled.last(); row++) {
                double height = height(row);
                boolean full = used + height > pagePoints && filled.contains(row);
                if (breaks.contains(row) || (used > titles() && (full || isTorn(row, used)))) {
                    breaks.add(row);
                    used = titles();
                }
                used += height;
            }
        }
        return breaks.size() > MOST ? sheet.layout().pageBreaksBefore() : new ArrayList<>(breaks);
    }

    /** Whether the part that begins in a row has to begin on the next page. */
    private boolean isTorn(int row, double used) {
        if (names.contains(row)) {
            double whole = height(row, last(row, names));
            return used + whole > pagePoints && (whole + titles() <= pagePoints || isTornPart(row, row + 1, used));
        }
        return headings.contains(row) && !names.contains(row - 1) && isTornPart(row, row, used);
    }

    private boolean isTornPart(int first, int heading, double used) {
        int last = last(heading, headings);
        boolean held = height(first, last) + titles() <= pagePoints;
        return used + height(first, held ? last : Math.min(last, heading + FIRST_ROWS)) > pagePoints;
    }

    /** The last filled row before the next of some given rows, or before the next break. */
    private int last(int row, SortedSet<Integer> next) {
        int end = Math.min(
                first(next.tailSet(row + 1)), Math.min(first(names.tailSet(row + 1)), first(breaks.tailSet(row + 1))));
        return filled.headSet(end).last();
    }

    private static int first(SortedSet<Integer> rows) {
        return rows.isEmpty() ? Integer.MAX_VALUE : rows.first();
    }

    private double titles() {
        return sheet.layout().frozenRows() == 0 ? 0 : height(0, sheet.layout().frozenRows() - 1);
    }

    private double height(int first, int last) {
        double height = 0;
        for (int row = first; row <= last; row++) {
            height += height(row);
        }
        return height;
    }

    private double height(int row) {
        return fit.height(row).orElse(TextFit.USUAL_POINTS);
    }

    private @Nullable Look look(int row) {
        SortedMap<Integer, Cell> cells = sheet.cells().getOrDefault(row, new TreeMap<>());
        Cell cell = cells.get(0);
        return cell == null ? null : cell.look();
    }
}
