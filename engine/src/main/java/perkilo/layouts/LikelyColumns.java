package perkilo.layouts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** What the columns of a table with unknown headers can hold, by their cells. */
final class LikelyColumns {

    private static final int ROWS_LOOKED_AT = 40;

    private LikelyColumns() {}

    /** Whether most rows below a row hold a figure. */
    static boolean hasFigures(Grid grid, int[] rows, int place) {
        int figures = 0;
        int looked = 0;
        for (int at = place + 1; at < rows.length && looked < ROWS_LOOKED_AT; at++) {
            looked++;
            var cells = grid.row(rows[at]).values();
            figures += cells.size() > 1 && cells.stream().anyMatch(LikelyColumns::isFigure) ? 1 : 0;
        }
        return looked > 0 && 2 * figures >= looked;
    }

    private static boolean isFigure(Cell cell) {
        return cell.kind() == Cell.Kind.NUMBER
                || (cell.kind() == Cell.Kind.TEXT && NumberWords.of(cell.text()).isPresent());
    }

    /** The table with a question for each column that is not understood; likely meanings come first. */
    static ListLayout asked(ListLayout layout) {
        Map<Integer, HeaderReading> readings = new LinkedHashMap<>(layout.readings());
        layout.headers().forEach((column, header) -> {
            if (!readings.containsKey(column)) {
                readings.put(
                        column,
                        new HeaderReading(
                                null, HeaderReading.noteIn(header), choices(layout, column), HeaderReading.Doubt.UNKNOWN));
            }
        });
        return new ListLayout(
                layout.grid(),
                layout.above(),
                layout.firstHeader(),
                layout.lastHeader(),
                layout.end(),
                layout.headers(),
                readings,
                layout.pairs(),
                layout.others());
    }

    private static List<String> choices(ListLayout layout, int column) {
        int packs = 0;
        int numbers = 0;
        int cells = 0;
        for (int row : layout.rows()) {
            Cell cell = layout.grid().at(row, column);
            if (cell.isBlank() || cells >= ROWS_LOOKED_AT) {
                continue;
            }
            cells++;
            boolean pack = cell.kind() == Cell.Kind.TEXT
                    && PackText.of(cell.text(), DecimalMark.POINT, null).isPresent();
            packs += pack ? 1 : 0;
            numbers += isFigure(cell) ? 1 : 0;
        }
        List<String> choices = new ArrayList<>();
        if (2 * packs > cells) {
            choices.addAll(List.of("pack", "item", "price"));
        } else if (2 * numbers > cells) {
            choices.addAll(List.of("price", "pack", "from quantity", "minimum order", "code"));
        } else {
            choices.addAll(List.of("item", "INCI name", "pack", "code", "currency"));
        }
        choices.add("nothing");
        return choices;
    }
}
