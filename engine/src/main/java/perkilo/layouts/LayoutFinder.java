package perkilo.layouts;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Finds the headers of a list: one row, or two if a broad header is above narrower ones. */
public final class LayoutFinder {

    private static final int ROWS_LOOKED_AT = 80;
    private static final int LEAST = 2;

    private LayoutFinder() {}

    /** The layouts of all sheets that hold a list. */
    public static List<ListLayout> find(List<Grid> grids) {
        return grids.stream().flatMap(grid -> find(grid).stream()).toList();
    }

    /**
     * A table whose row of headings is known. A column without a heading is called by its letters.
     *
     * @param row from zero
     */
    public static ListLayout at(Grid grid, int row) {
        ListLayout found = layout(grid, row, row);
        Map<Integer, String> headers = new TreeMap<>(found.headers());
        Arrays.stream(grid.rows().below(row))
                .limit(ROWS_LOOKED_AT)
                .forEach(below -> grid.row(below)
                        .keySet()
                        .forEach(column -> headers.putIfAbsent(column, ListLayout.withoutHeading(column))));
        return new ListLayout(grid, row, row, headers, found.readings());
    }

    private static Optional<ListLayout> find(Grid grid) {
        List<Integer> rows = Arrays.stream(grid.rows().numbers())
                .limit(ROWS_LOOKED_AT)
                .boxed()
                .toList();
        ListLayout best = null;
        for (int at = 0; at < rows.size(); at++) {
            int row = rows.get(at);
            Set<Integer> columns = new HashSet<>(grid.row(row).keySet());
            if (mayBeBetter(best, columns)) {
                best = better(best, layout(grid, row, row));
            }
            if (at + 1 < rows.size() && rows.get(at + 1) == row + 1) {
                columns.addAll(grid.row(row + 1).keySet());
                if (mayBeBetter(best, columns)) {
                    best = better(best, layout(grid, row, row + 1));
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Whether headers in these columns can be better than the best so far: they must be more. */
    private static boolean mayBeBetter(@Nullable ListLayout best, Set<Integer> columns) {
        return best == null || columns.size() > best.readings().size();
    }

    private static @Nullable ListLayout better(@Nullable ListLayout best, ListLayout other) {
        if (!isList(other)) {
            return best;
        }
        return best == null || other.readings().size() > best.readings().size() ? other : best;
    }

    /** Whether headers name an item and a price, among others. */
    private static boolean isList(ListLayout layout) {
        boolean item = layout.readings().values().stream().anyMatch(LayoutFinder::isName);
        boolean price = layout.readings().values().stream().anyMatch(LayoutFinder::isPrice);
        return item && price && layout.readings().size() >= LEAST;
    }

    private static boolean isName(HeaderReading reading) {
        ColumnUse use = reading.use();
        return use != null && (use.meaning() == Meaning.ITEM || use.meaning() == Meaning.INCI);
    }

    private static boolean isPrice(HeaderReading reading) {
        ColumnUse use = reading.use();
        return use == null || use.meaning() == Meaning.PRICE;
    }

    private static ListLayout layout(Grid grid, int first, int last) {
        Map<Integer, String> headers = new LinkedHashMap<>();
        for (int column : grid.row(last).keySet()) {
            headers.put(column, grid.at(last, column).text());
        }
        if (first < last) {
            for (int column : grid.row(first).keySet()) {
                headers.putIfAbsent(column, grid.at(first, column).text());
            }
            headers.replaceAll((column, below) -> joined(above(grid, first, column), below));
        }
        Map<Integer, HeaderReading> readings = new LinkedHashMap<>();
        headers.forEach((column, header) -> {
            Cell cell = grid.at(last, column);
            if (cell.kind() != Cell.Kind.NUMBER || first < last) {
                HeaderReading.of(header).ifPresent(reading -> readings.put(column, reading));
            }
        });
        return new ListLayout(grid, first, last, headers, readings);
    }

    private static String joined(String above, String below) {
        return above.isEmpty() || above.equals(below) ? below : above + " " + below;
    }

    /** The text above a column: in its own cell, or in a merged cell that covers it. */
    private static String above(Grid grid, int row, int column) {
        Cell own = grid.at(row, column);
        if (!own.isBlank()) {
            return own.text();
        }
        return grid.mergedAt(row, column)
                .map(block -> grid.at(block.firstRow(), block.firstColumn()).text())
                .orElse("");
    }
}
