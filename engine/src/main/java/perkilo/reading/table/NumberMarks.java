package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.schema.InputColumn;
import perkilo.schema.ValueKind;
import perkilo.xlsx.grid.Cell;

/**
 * Which of two numbers a text such as {@code 1,250} means, by the other numbers of its column, else of its table. A
 * column that nothing decides is reported once.
 */
final class NumberMarks {

    private final FoundTable table;
    private final Map<InputColumn, Character> byColumn = new HashMap<>();
    private final Map<InputColumn, Integer> doubtful = new HashMap<>();
    private final Set<InputColumn> reported = new HashSet<>();
    private @Nullable Character ofTable;

    NumberMarks(FoundTable table) {
        this.table = table;
    }

    private static final char UNKNOWN = '?';
    private static final char BOTH = '!';

    /** The number that is meant; null if nothing decides. */
    @Nullable BigDecimal meant(InputColumn column, String text, NumberText.Ambiguous two) {
        char mark = markOf(column);
        if (mark == UNKNOWN) {
            mark = ofTable();
        }
        if (mark == UNKNOWN || mark == BOTH) {
            return null;
        }
        boolean decimals = text.indexOf(mark) >= 0;
        return decimals ? two.small() : two.large();
    }

    /** Whether a column is to be reported: the first time alone. */
    boolean isFirst(InputColumn column) {
        return reported.add(column);
    }

    /** How many cells of a column can mean two numbers. */
    int doubtful(InputColumn column) {
        return doubtful.getOrDefault(column, 1);
    }

    private char ofTable() {
        Character known = ofTable;
        if (known == null) {
            char mark = UNKNOWN;
            for (InputColumn column : table.columns().keySet()) {
                if (column.kind().isNumber()) {
                    mark = both(mark, markOf(column));
                }
            }
            ofTable = mark;
            return mark;
        }
        return known;
    }

    private char markOf(InputColumn column) {
        Character known = byColumn.get(column);
        if (known == null) {
            known = ofColumn(column);
            byColumn.put(column, known);
        }
        return known;
    }

    private char ofColumn(InputColumn column) {
        FoundTable.Place place = table.columns().get(column);
        char mark = UNKNOWN;
        int both = 0;
        if (place != null) {
            for (int row : table.grid().rows().between(table.headerRow(), table.lastRow() + 1)) {
                Cell cell = table.grid().at(row, place.index());
                if (cell.kind() == Cell.Kind.TEXT) {
                    mark = both(mark, shownBy(cell.text(), column.kind() == ValueKind.WHOLE));
                    both += NumberText.parse(cell.text()) instanceof NumberText.Ambiguous ? 1 : 0;
                }
            }
        }
        doubtful.put(column, both);
        return mark;
    }

    private static char both(char one, char other) {
        return one == UNKNOWN || one == other ? other : other == UNKNOWN ? one : BOTH;
    }

    /** The decimal mark that a number in words must have. */
    private static char shownBy(String text, boolean whole) {
        NumberText read = NumberText.parse(text);
        if (read instanceof NumberText.Ambiguous two) {
            boolean decimals = two.small().stripTrailingZeros().scale() > 0;
            return whole && decimals ? (text.indexOf(',') >= 0 ? '.' : ',') : UNKNOWN;
        }
        if (!(read instanceof NumberText.Parsed)) {
            return UNKNOWN;
        }
        int first = digit(text, 0, 1);
        int last = digit(text, text.length() - 1, -1);
        String digits = first < 0 ? "" : text.substring(first, last + 1);
        int point = digits.lastIndexOf('.');
        int comma = digits.lastIndexOf(',');
        if (point < 0 && comma < 0) {
            return UNKNOWN;
        }
        char mark = point > comma ? '.' : ',';
        boolean twice = digits.indexOf(mark) != Math.max(point, comma);
        char other = mark == '.' ? ',' : '.';
        return twice ? other : mark;
    }

    private static int digit(String text, int from, int step) {
        int at = from;
        while (at >= 0 && at < text.length()) {
            if (Character.isDigit(text.charAt(at))) {
                return at;
            }
            at += step;
        }
        return -1;
    }
}
