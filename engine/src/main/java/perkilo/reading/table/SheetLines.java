package perkilo.reading.table;

import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.units.Currencies;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Rows and lines of a sheet in words. */
final class SheetLines {

    private static final int ROWS_FOR_HEADERS = 40;

    private static final int NAMED_RANGES = 6;
    private static final int CODE = 3;

    private SheetLines() {}

    /** The cells of a line as one text. */
    static String text(Collection<Cell> cells) {
        return cells.stream().map(Cell::text).collect(Collectors.joining(" "));
    }

    /**
     * Why a line beside a table may matter: it has a word about costs, a day, a currency or a percentage; empty if it
     * has none.
     */
    static boolean mayMatter(Collection<Cell> cells, CostWords words) {
        for (Cell cell : cells) {
            boolean day = cell.kind() == Cell.Kind.DATE;
            if (day || cell.isPercentFormat() || (cell.kind() == Cell.Kind.TEXT && mayMatter(cell.text(), words))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a text has such a word, a currency or a percentage. */
    static boolean mayMatter(String text, CostWords words) {
        boolean more =
                words.in(text).filter(about -> about != CostWords.About.PRICE).isPresent();
        if (more || text.indexOf('%') >= 0) {
            return true;
        }
        for (String word : text.split("[^\\p{L}\\p{Sc}]+", -1)) {
            boolean code = word.length() == CODE
                    && word.equals(word.toUpperCase(java.util.Locale.ROOT))
                    && Currencies.find(word).isPresent();
            boolean sign = word.length() == 1 && Character.getType(word.charAt(0)) == Character.CURRENCY_SYMBOL;
            if (code || sign) {
                return true;
            }
        }
        return Optional.of(DateText.parse(text))
                .filter(DateText.Parsed.class::isInstance)
                .isPresent();
    }

    /**
     * The texts of the first row of several texts and nothing else that has cells below; none if there is no such row.
     */
    static List<String> headers(Grid grid) {
        int[] rows = grid.rows().numbers();
        for (int at = 0; at + 1 < Math.min(rows.length, ROWS_FOR_HEADERS); at++) {
            NavigableMap<Integer, Cell> cells = grid.row(rows[at]);
            boolean texts =
                    cells.size() >= 2 && cells.values().stream().allMatch(cell -> cell.kind() == Cell.Kind.TEXT);
            long below = grid.row(rows[at + 1]).keySet().stream()
                    .filter(cells::containsKey)
                    .count();
            if (texts && below >= 2) {
                return cells.values().stream().map(Cell::text).toList();
            }
        }
        return List.of();
    }

    /** Rows as a person counts them: {@code 3, 5–8}. */
    static String rows(BitSet rows) {
        StringBuilder text = new StringBuilder();
        int ranges = 0;
        for (int first = rows.nextSetBit(0); first >= 0; ) {
            int next = rows.nextClearBit(first);
            if (ranges == NAMED_RANGES) {
                return text + " …";
            }
            text.append(ranges++ == 0 ? "" : ", ").append(first + 1).append(next - 1 > first ? "–" + next : "");
            first = rows.nextSetBit(next);
        }
        return text.toString();
    }
}
