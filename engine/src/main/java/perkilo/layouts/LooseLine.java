package perkilo.layouts;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import perkilo.origin.Origin;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * A line of text around a table, or between its rows.
 *
 * @param text its cells, joined
 * @param origin its first cell
 * @param row its row
 * @param cells how many cells it has
 * @param place where it is
 */
record LooseLine(String text, Origin origin, int row, int cells, Place place) {

    /** Where a line is. */
    enum Place {
        ABOVE,
        WITHIN,
        BELOW,
        /** On a sheet without a table. */
        ELSEWHERE
    }

    private static final Pattern CLAUSES = Pattern.compile(
            "(?<=\\p{L}{5}|\\d{4}|[)%*])(?<!einschl|zuzgl|abzgl|zzügl)[.;!]\\s+(?=\\p{Lu})|[;|\\n]|\\s[-–—•]\\s(?=\\p{Lu})|(?<=%|\\d{4}),\\s(?=\\p{L})");
    private static final int ROWS_ELSEWHERE = 200;
    private static final int LONGEST = 400;

    /** The sentences of the line. */
    List<String> clauses() {
        List<String> clauses = new ArrayList<>();
        for (String clause : CLAUSES.split(text, -1)) {
            if (!clause.isBlank()) {
                clauses.add(clause.strip());
            }
        }
        return clauses;
    }

    /** The lines above the headers of a table. */
    static List<LooseLine> above(ListLayout layout) {
        List<LooseLine> lines = new ArrayList<>();
        for (int row : layout.grid().rows().between(layout.above(), layout.firstHeader())) {
            lines.add(of(layout.grid(), row, Place.ABOVE));
        }
        return lines;
    }

    /** All lines that belong to a table. */
    static List<LooseLine> of(ListColumns columns) {
        ListLayout layout = columns.layout();
        Grid grid = layout.grid();
        BitSet figures = new BitSet();
        columns.uses().forEach((column, use) -> {
            if (use.meaning() == Meaning.PRICE || use.meaning() == Meaning.PACK) {
                figures.set(column);
            }
        });
        List<LooseLine> lines = new ArrayList<>(above(layout));
        List<Integer> loose = new ArrayList<>();
        int last = -1;
        for (int row : layout.rows()) {
            if (grid.rows().holdsAny(row, figures)) {
                last = row;
            } else {
                loose.add(row);
            }
        }
        for (int row : loose) {
            lines.add(of(grid, row, row < last ? Place.WITHIN : Place.BELOW));
        }
        for (Grid other : layout.others()) {
            int[] rows = other.rows().numbers();
            for (int at = 0; at < Math.min(rows.length, ROWS_ELSEWHERE); at++) {
                lines.add(of(other, rows[at], Place.ELSEWHERE));
            }
        }
        return lines;
    }

    private static LooseLine of(Grid grid, int row, Place place) {
        Map<Integer, Cell> cells = grid.row(row);
        StringBuilder line = new StringBuilder();
        for (Cell cell : cells.values()) {
            line.append(line.length() == 0 ? "" : " ").append(cell.text());
        }
        String text = line.length() > LONGEST ? line.substring(0, LONGEST) : line.toString();
        int first = grid.row(row).isEmpty() ? 0 : grid.row(row).firstKey();
        return new LooseLine(text, grid.origin(row, first), row, cells.size(), place);
    }
}
