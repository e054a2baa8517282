package perkilo.layouts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Finds the tables of a list by their headers: one row, or two if a broad header is above narrower ones. */
public final class LayoutFinder {

    private static final int ROWS_LOOKED_AT = 80;
    private static final int CELLS_LOOKED_AT = 3;
    private static final int LONGEST_HEADER = 60;
    private static final int LEAST = 2;
    private static final int MOST_TITLE_CELLS = 2;

    private static final List<String> NAMES = List.of(Meaning.ITEM.word(), Meaning.INCI.word());

    private final Map<String, Optional<HeaderReading>> readings = new HashMap<>();
    private final Map<String, Boolean> names = new HashMap<>();

    private LayoutFinder() {}

    /**
     * The tables of all sheets. Sheets without one are kept beside the first table, as they may say something of it.
     */
    public static List<ListLayout> find(List<Grid> grids) {
        LayoutFinder finder = new LayoutFinder();
        List<ListLayout> found = new ArrayList<>();
        for (Grid grid : grids) {
            found.addAll(finder.tables(grid));
        }
        List<Grid> others = new ArrayList<>(grids);
        Set<Grid> used = Collections.newSetFromMap(new IdentityHashMap<>());
        found.forEach(layout -> used.add(layout.grid()));
        others.removeIf(used::contains);
        if (!found.isEmpty() && !others.isEmpty()) {
            found.set(0, found.get(0).with(others));
        }
        return found;
    }

    /**
     * A table whose row of headings is known. A column without a heading is called by its letters.
     *
     * @param row from zero
     */
    public static ListLayout at(Grid grid, int row) {
        ListLayout found = new LayoutFinder().layout(grid, row, row);
        Map<Integer, String> headers = new TreeMap<>(found.headers());
        Arrays.stream(grid.rows().below(row))
                .limit(ROWS_LOOKED_AT)
                .forEach(below -> grid.row(below)
                        .keySet()
                        .forEach(column -> headers.putIfAbsent(column, ListLayout.withoutHeading(column))));
        return new ListLayout(
                grid, -1, row, row, Integer.MAX_VALUE, headers, found.readings(), found.pairs(), List.of());
    }

    private List<ListLayout> tables(Grid grid) {
        List<ListLayout> tables = new ArrayList<>();
        int[] rows = grid.rows().numbers();
        int after = -1;
        for (int at = 0; at < rows.length; at++) {
            int row = rows[at];
            boolean looked = at < ROWS_LOOKED_AT || (!tables.isEmpty() && mayBeHeader(grid, row));
            if (row <= after || !looked) {
                continue;
            }
            ListLayout table = best(grid, row, at + 1 < rows.length && rows[at + 1] == row + 1);
            if (table != null && (tables.isEmpty() || !isSame(tables.get(tables.size() - 1), table))) {
                tables.add(table);
            }
            after = table == null ? after : table.lastHeader();
        }
        return parted(grid, tables);
    }

    /** Whether a row far down can be one of headers; most rows are not, and cost little. */
    private static boolean mayBeHeader(Grid grid, int row) {
        if (grid.rows().holdsNumber(row)) {
            return false;
        }
        int looked = 0;
        for (Cell cell : grid.row(row).values()) {
            if (++looked > CELLS_LOOKED_AT) {
                return false;
            }
            if (cell.kind() == Cell.Kind.TEXT
                    && cell.text().length() <= LONGEST_HEADER
                    && (ListWords.is(Meaning.ITEM.word(), cell.text())
                            || ListWords.is(Meaning.INCI.word(), cell.text()))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isSame(ListLayout one, ListLayout other) {
        return one.headers().equals(other.headers());
    }

    /** The best headers that begin at a row, or in the row below it. */
    private @Nullable ListLayout best(Grid grid, int row, boolean hasNext) {
        ListLayout best = null;
        Set<Integer> columns = new HashSet<>(grid.row(row).keySet());
        if (columns.size() >= LEAST) {
            best = better(best, grid, row, row);
        }
        if (hasNext) {
            Set<Integer> below = grid.row(row + 1).keySet();
            if (below.size() >= LEAST
                    && below.size() > (best == null ? 0 : best.readings().size())) {
                best = better(best, grid, row + 1, row + 1);
            }
            columns.addAll(below);
            if (columns.size() > (best == null ? 1 : best.readings().size())) {
                best = better(best, grid, row, row + 1);
            }
        }
        return best;
    }

    private @Nullable ListLayout better(@Nullable ListLayout best, Grid grid, int first, int last) {
        NavigableMap<Integer, String> headers = headers(grid, first, last);
        if (headers.values().stream().noneMatch(this::mayBeName)) {
            return best;
        }
        ListLayout other = layout(grid, first, last, headers);
        if (!isList(other)) {
            return best;
        }
        return best == null || understood(other) > understood(best) ? other : best;
    }

    private static long understood(ListLayout layout) {
        return layout.readings().values().stream()
                .filter(reading -> reading.doubt() != HeaderReading.Doubt.COST)
                .count();
    }

    /** Whether headers name an item and a price, among others. */
    private static boolean isList(ListLayout layout) {
        boolean item = layout.readings().values().stream().anyMatch(LayoutFinder::isName);
        boolean price = layout.readings().values().stream().anyMatch(HeaderReading::isPrice);
        return item && price && layout.readings().size() >= LEAST;
    }

    private static boolean isName(HeaderReading reading) {
        ColumnUse use = reading.use();
        return use != null && (use.meaning() == Meaning.ITEM || use.meaning() == Meaning.INCI);
    }

    /** The tables with the rows that belong to each: the lines directly above its headers, and those below it. */
    private static List<ListLayout> parted(Grid grid, List<ListLayout> tables) {
        List<ListLayout> parted = new ArrayList<>();
        int above = -1;
        for (int at = 0; at < tables.size(); at++) {
            ListLayout table = tables.get(at);
            int end = Integer.MAX_VALUE;
            int next = above;
            if (at + 1 < tables.size()) {
                next = beforeTitle(grid, table.lastHeader(), tables.get(at + 1).firstHeader());
                end = next + 1;
            }
            parted.add(table.between(above, end, List.of()));
            above = next;
        }
        return parted;
    }

    /** The last row that belongs to the table above: lines after a blank row are the title of the next one. */
    private static int beforeTitle(Grid grid, int header, int nextHeader) {
        int top = nextHeader;
        int block = nextHeader;
        for (int row = nextHeader - 1; row > header; row--) {
            int cells = grid.row(row).size();
            if (cells > MOST_TITLE_CELLS) {
                return (grid.row(row + 1).isEmpty() ? top : block) - 1;
            }
            if (cells == 0) {
                top = block;
            } else {
                block = row;
            }
        }
        return block - 1;
    }

    /** Whether a header holds a word for an item: a quick test that spares most rows the full reading. */
    private boolean mayBeName(String header) {
        return names.computeIfAbsent(header, text -> ListWords.mayHold(NAMES, text));
    }

    private ListLayout layout(Grid grid, int first, int last) {
        return layout(grid, first, last, headers(grid, first, last));
    }

    private static NavigableMap<Integer, String> headers(Grid grid, int first, int last) {
        NavigableMap<Integer, String> headers = new TreeMap<>();
        for (int column : grid.row(last).keySet()) {
            headers.put(column, grid.at(last, column).text());
        }
        if (first < last) {
            for (int column : grid.row(first).keySet()) {
                headers.putIfAbsent(column, grid.at(first, column).text());
            }
            headers.replaceAll((column, below) -> joined(above(grid, first, column), below));
        }
        return headers;
    }

    private ListLayout layout(Grid grid, int first, int last, NavigableMap<Integer, String> headers) {
        Map<Integer, HeaderReading> known = new LinkedHashMap<>();
        headers.forEach((column, header) -> {
            Cell cell = grid.at(last, column);
            if (cell.kind() != Cell.Kind.NUMBER || first < last) {
                reading(header).ifPresent(reading -> known.put(column, reading));
            }
        });
        Map<Integer, Integer> pairs = PairedColumns.of(headers, known);
        return new ListLayout(
                grid, -1, first, last, Integer.MAX_VALUE, new LinkedHashMap<>(headers), known, pairs, List.of());
    }

    private Optional<HeaderReading> reading(String header) {
        return readings.computeIfAbsent(header, HeaderReading::of);
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
