package perkilo.report.inputs;

import java.util.ArrayList;
import java.util.List;
import perkilo.origin.SeenTable;
import perkilo.report.inputs.Effects.Effect;
import perkilo.sheet.SheetNames;

/**
 * The formulas that compare the cells of a person with what they held.
 *
 * <p>They compare whole columns at once, with functions that all office suites have. Each gives zero while nothing has
 * changed, and never an error: a column that is gone counts as one change. Capitals do not matter, as in names.
 */
final class Comparison {

    private final SeenTable table;

    Comparison(SeenTable table) {
        this.table = table;
    }

    /** How many rows, cells below the table and headings there are more or fewer. */
    String extent() {
        SeenTable.Frame frame = table.frame();
        int first = Math.max(0, frame.headerRow() + 1);
        List<String> parts = new ArrayList<>();
        if (frame.lastRow() >= first) {
            String rows = range(first, frame.firstColumn(), frame.lastRow(), frame.firstColumn());
            parts.add(apart("ROWS(" + rows + ")", frame.lastRow() - first + 1L));
        }
        String below = range(frame.lastRow() + 1, frame.firstColumn(), frame.belowTo(), frame.lastColumn());
        parts.add(apart("COUNTA(" + below + ")", frame.below()));
        if (frame.headerRow() >= 0) {
            String heads = range(frame.headerRow(), frame.firstColumn(), frame.headerRow(), frame.headingsTo());
            parts.add(apart("COUNTA(" + heads + ")", frame.headings()));
        }
        return "IFERROR(" + String.join("+", parts) + ",1)";
    }

    private static String apart(String counted, long then) {
        return "ABS(" + counted + "-" + then + ")";
    }

    /** The cells of a column. */
    String cells(SeenTable.Part part) {
        return range(part.firstRow(), part.column(), part.lastRow(), part.column());
    }

    private String range(int fromRow, int fromColumn, int toRow, int toColumn) {
        return SheetNames.quoted(table.sheet()) + "!" + SheetNames.absolute(fromRow, fromColumn) + ":"
                + SheetNames.absolute(toRow, toColumn);
    }

    /**
     * How many cells of a column hold something else.
     *
     * @param then the range that holds what they held
     */
    String changed(SeenTable.Part part, String then) {
        return whileSame(part, differing(part, cells(part), then));
    }

    private static String differing(SeenTable.Part part, String now, String then) {
        boolean onlyDates = part.range().dates()
                && part.cells() != null
                && part.cells().stream().noneMatch(cell -> cell instanceof String words && !words.isEmpty());
        if (onlyDates) { // a time of day does not count
            return "SUMPRODUCT(ISNUMBER(" + then + ")*((" + now + "<" + then + ")+(" + now + ">=" + then + "+1))"
                    + "+(1-ISNUMBER(" + then + "))*(" + now + "<>" + then + "))";
        }
        return "SUMPRODUCT(1-(ISNUMBER(" + now + ")=ISNUMBER(" + then + "))*(" + now + "=" + then + "))";
    }

    /** How many cells of a column, whose numbers the figures follow, hold what they do not follow. */
    String notFollowed(Compared column, SeenTable.Part part, String then) {
        String now = cells(part);
        StringBuilder all = new StringBuilder(
                "SUMPRODUCT((1-ISNUMBER(" + now + "))*(1-(1-ISNUMBER(" + then + "))*(" + now + "=" + then + ")))");
        if (!column.blanksFollow()) {
            all.append("+SUMPRODUCT(ISNUMBER(")
                    .append(now)
                    .append(")*(1-ISNUMBER(")
                    .append(then)
                    .append(")))");
        }
        for (String condition : part.range().outside()) {
            all.append("+COUNTIF(").append(now).append(",\"").append(condition).append("\")");
        }
        boolean whole = part.range().whole()
                && part.cells() != null
                && part.cells().stream().noneMatch(cell -> cell instanceof String words && !words.isEmpty());
        if (whole) {
            all.append("+SUMPRODUCT(--(INT(")
                    .append(now)
                    .append(")<>")
                    .append(now)
                    .append("))");
        }
        return whileSame(part, all.toString());
    }

    /**
     * Compares sums over a long column.
     *
     * @return one if they differ
     */
    String changedSums(SeenTable.Part part, SeenTable.Sums sums) {
        String now = cells(part);
        List<String> parts = new ArrayList<>(List.of(
                apart("COUNTA(" + now + ")", sums.filled()),
                apart("COUNT(" + now + ")", sums.numbers()),
                apart(
                        "SUMPRODUCT(ISTEXT(" + now + ")*LEN(" + now + ")*(ROW(" + now + ")-" + part.firstRow() + "))",
                        sums.lengths().longValueExact())));
        if (!part.range().dates()) {
            parts.add("ABS(ROUND(SUM(" + now + ")-" + sums.sum().toPlainString() + ",4))");
        }
        return "IFERROR(IF(ROWS(" + now + ")=" + part.rows() + ",IF(" + String.join("+", parts) + "=0,0,1),0),1)";
    }

    /** Rows that were added or removed are counted once, by the extent of the table. */
    private String whileSame(SeenTable.Part part, String compared) {
        return "IFERROR(IF(ROWS(" + cells(part) + ")=" + part.rows() + "," + compared + ",0),1)";
    }

    /** Whether a column changes something on the result sheets. */
    static boolean counts(Compared column) {
        return column.effect() != Effect.NOTHING;
    }
}
