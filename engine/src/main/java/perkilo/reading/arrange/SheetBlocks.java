package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ListWords;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Cuts a sheet with formulas and other tables into blocks, one for each table: side by side, one below the other, and
 * what stands below the total of a formula. Each cell stays at its place.
 */
final class SheetBlocks {

    private static final int MOST_ROWS = 3000;
    private static final int LONGEST_HEADER = 60;
    private static final int LEAST_HEADERS = 2;
    private static final int MOST_TITLE_ROWS = 3;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal ROUGHLY = new BigDecimal("0.05");

    private final Grid grid;
    private final Predicate<Cell> isHeader;

    private SheetBlocks(Grid grid, Predicate<Cell> isHeader) {
        this.grid = grid;
        this.isHeader = isHeader;
    }

    /**
     * A block of a sheet.
     *
     * @param grid its cells; the title is the name of its formula where several formulas share a sheet
     * @param isTable whether it has a row of headers; else it is what stands below or above tables
     */
    record SheetBlock(Grid grid, boolean isTable) {}

    /** The first and the last column of a row of headers, and whether they head a formula. */
    private record Band(int row, int first, int last, boolean isFormula) {

        boolean overlaps(Band other) {
            return first <= other.last && other.first <= last;
        }
    }

    /**
     * The blocks of a sheet; the sheet alone if it holds no formula beside something else.
     *
     * @param isHeader whether a cell is a header of some table
     */
    static List<SheetBlock> of(Grid grid, Predicate<Cell> isHeader) {
        int rows = grid.rows().numbers().length;
        List<SheetBlock> blocks = rows == 0 || rows > MOST_ROWS || !grid.ofBook() || grid.isArranged()
                ? List.of()
                : new SheetBlocks(grid, isHeader).blocks();
        return blocks.isEmpty() ? List.of(new SheetBlock(grid, true)) : blocks;
    }

    private List<SheetBlock> blocks() {
        List<Band> bands = bands();
        if (bands.stream().noneMatch(Band::isFormula)) {
            return List.of();
        }
        long formulas = bands.stream().filter(Band::isFormula).count();
        List<SheetBlock> tables = new ArrayList<>();
        Map<Integer, Map<Integer, Cell>> taken = new HashMap<>();
        int sheetLast = grid.rows().last();
        for (Band band : bands) {
            Band below = bands.stream()
                    .filter(other -> other.row() > band.row() && other.overlaps(band))
                    .min(Comparator.comparingInt(Band::row))
                    .orElse(null);
            int last = below == null ? sheetLast : top(below, band.row()) - 1;
            int top = top(band, above(bands, band));
            int left = 0;
            int right = Integer.MAX_VALUE - 1;
            for (Band other : bands) {
                boolean beside = !other.overlaps(band) && other.row() <= last && end(bands, other) >= top;
                if (beside && other.last() < band.first()) {
                    left = Math.max(left, other.last() + 1);
                } else if (beside && other.first() > band.last()) {
                    right = Math.min(right, other.first() - 1);
                }
            }
            int tail = band.isFormula() ? tail(band, last) : last + 1;
            Grid block = grid.part(new Grid.Block(top, tail - 1, left, right));
            String title = band.isFormula() && formulas > 1 ? title(band, top) : null;
            Grid named = title == null ? block : block.titled(title);
            take(block, taken);
            FormulaWithPrices both = band.isFormula() ? FormulaWithPrices.of(named, band.row()) : null;
            if (both == null && band.isFormula()) {
                tables.add(new SheetBlock(named, true));
            } else if (both == null) {
                PiecesWithPrices pieces = PiecesWithPrices.of(named, band.row(), band.first(), band.last());
                tables.add(new SheetBlock(pieces.prices(), true));
                pieces.counts()
                        .forEach((row, columns) -> columns.forEach(column ->
                                taken.getOrDefault(row, new HashMap<>()).remove(column)));
            } else {
                tables.add(new SheetBlock(both.formula(), true));
                tables.add(new SheetBlock(both.prices(), true));
            }
        }
        Grid rest = grid.with(taken).titled("");
        boolean more = Arrays.stream(rest.rows().numbers())
                .anyMatch(row -> !rest.row(row).isEmpty());
        if (tables.size() < 2 && !more) {
            return List.of();
        }
        if (more) {
            tables.add(new SheetBlock(rest, false));
        }
        return tables;
    }

    private static void take(Grid block, Map<Integer, Map<Integer, Cell>> taken) {
        for (int row : block.rows().numbers()) {
            block.row(row)
                    .keySet()
                    .forEach(column ->
                            taken.computeIfAbsent(row, any -> new HashMap<>()).put(column, Cell.BLANK));
        }
    }

    // rows of headers

    private List<Band> bands() {
        List<Band> bands = new ArrayList<>();
        for (int row : grid.rows().numbers()) {
            List<Band> found = new ArrayList<>();
            for (NavigableMap<Integer, Cell> run : runs(grid.row(row))) {
                if (isHead(row, run)) {
                    found.add(new Band(row, run.firstKey(), run.lastKey(), FormulaArranger.isHead(run)));
                }
            }
            bands.addAll(found);
        }
        // a heading with its own headers inside a formula, such as that of a phase, begins no block
        bands.removeIf(band -> band.isFormula() && isOfPhase(band));
        return bands;
    }

    private boolean isOfPhase(Band band) {
        String title = title(band, top(band, -1));
        return title != null && PhaseText.name(title).isPresent();
    }

    /** The parts of a row between blank cells; a part also ends before its first header comes again. */
    private static List<NavigableMap<Integer, Cell>> runs(NavigableMap<Integer, Cell> cells) {
        List<NavigableMap<Integer, Cell>> runs = new ArrayList<>();
        NavigableMap<Integer, Cell> run = new TreeMap<>();
        for (Map.Entry<Integer, Cell> cell : cells.entrySet()) {
            boolean gap = !run.isEmpty() && cell.getKey() > run.lastKey() + 1;
            boolean again = run.size() >= LEAST_HEADERS
                    && ListWords.key(cell.getValue().text())
                            .equals(ListWords.key(run.firstEntry().getValue().text()));
            if (gap || again) {
                runs.add(run);
                run = new TreeMap<>();
            }
            run.put(cell.getKey(), cell.getValue());
        }
        if (!run.isEmpty()) {
            runs.add(run);
        }
        return runs;
    }

    private boolean isHead(int row, NavigableMap<Integer, Cell> run) {
        int known = 0;
        for (Cell cell : run.values()) {
            if (!SheetCells.isText(cell) || cell.text().length() > LONGEST_HEADER) {
                return false;
            }
            known += isKnown(cell) ? 1 : 0;
        }
        if (known < LEAST_HEADERS) {
            return false;
        }
        return grid.row(row + 1)
                                .subMap(run.firstKey(), true, run.lastKey(), true)
                                .size()
                        > 0
                || grid.row(row + 2)
                                .subMap(run.firstKey(), true, run.lastKey(), true)
                                .size()
                        > 1;
    }

    private boolean isKnown(Cell cell) {
        return isHeader.test(cell) || SheetWords.header(cell.text()).isPresent() || Headings.isKnown(cell.text());
    }

    // titles

    private static int above(List<Band> bands, Band band) {
        return bands.stream()
                .filter(other -> other.row() < band.row() && other.overlaps(band))
                .mapToInt(Band::row)
                .max()
                .orElse(-1);
    }

    /** The last row that a band's table may take. */
    private int end(List<Band> bands, Band band) {
        return bands.stream()
                .filter(other -> other.row() > band.row() && other.overlaps(band))
                .mapToInt(other -> top(other, band.row()) - 1)
                .min()
                .orElse(grid.rows().last());
    }

    /**
     * The first row of a band's table: that of its title, or of its headers.
     *
     * @param above the headers of the table above; -1 if there is none
     */
    private int top(Band band, int above) {
        int header = band.row();
        int top = header;
        int blanks = 0;
        for (int row = header - 1; row > above && header - row <= MOST_TITLE_ROWS; row--) {
            NavigableMap<Integer, Cell> cells = within(band, row);
            if (cells.isEmpty()) {
                if (top < header || ++blanks > 1) {
                    break;
                }
                continue;
            }
            if (!isTitle(cells)) {
                break;
            }
            top = row;
        }
        return top;
    }

    private NavigableMap<Integer, Cell> within(Band band, int row) {
        return grid.row(row).subMap(band.first(), true, band.last(), true);
    }

    private static boolean isTitle(NavigableMap<Integer, Cell> cells) {
        Cell first = cells.firstEntry().getValue();
        boolean words = cells.size() == 1 && SheetCells.isText(first) && !SheetCells.isTotal(first);
        boolean labelled = cells.size() == 2
                && SheetWords.isFormulaLabel(
                        first.text().endsWith(":")
                                ? first.text().substring(0, first.text().length() - 1)
                                : first.text());
        return (words && !first.text().startsWith("*")) || labelled;
    }

    /** The words above the headers of a band; null if there are none, or if they say themselves what they are. */
    private @Nullable String title(Band band, int top) {
        for (int row = top; row < band.row(); row++) {
            NavigableMap<Integer, Cell> cells = within(band, row);
            if (cells.size() == 1) {
                String text = cells.firstEntry().getValue().text();
                int colon = text.indexOf(':');
                boolean label = SheetWords.isFormulaLabel(colon > 0 ? text.substring(0, colon) : text);
                return label ? null : text.strip();
            }
        }
        return null;
    }

    // what is below a formula

    /** The first row below a formula that is no longer of it; the row after the last one if all are. */
    private int tail(Band band, int last) {
        int[] rows = grid.rows().between(band.row(), last + 1);
        int total = -1;
        for (int at = 0; at < rows.length; at++) {
            if (isTotal(band, rows[at])) {
                total = at;
            }
        }
        if (total >= 0) {
            boolean lines = false;
            for (int at = total + 1; at < rows.length; at++) {
                boolean gap = rows[at] > rows[at - 1] + 1;
                if (gap && !lines) {
                    return rows[at];
                }
                lines |= within(band, rows[at]).size() > 1;
            }
            return !lines && total + 1 < rows.length ? rows[total + 1] : last + 1;
        }
        return afterHundred(band, rows, last);
    }

    private boolean isTotal(Band band, int row) {
        return within(band, row).values().stream().anyMatch(SheetCells::isTotal);
    }

    /** The first row after a blank one, if the numbers of a column add up to 100 before it. */
    private int afterHundred(Band band, int[] rows, int last) {
        Map<Integer, BigDecimal> sums = new HashMap<>();
        for (int at = 0; at < rows.length; at++) {
            boolean gap = at > 0 && rows[at] > rows[at - 1] + 1;
            if (gap && sums.values().stream().anyMatch(SheetBlocks::isWhole)) {
                return rows[at];
            }
            within(band, rows[at]).forEach((column, cell) -> {
                BigDecimal number = SheetCells.number(cell);
                if (number != null) {
                    sums.merge(column, cell.isPercentFormat() ? number.movePointRight(2) : number, BigDecimal::add);
                }
            });
        }
        return last + 1;
    }

    private static boolean isWhole(BigDecimal sum) {
        return sum.subtract(HUNDRED).abs().compareTo(ROUGHLY) <= 0;
    }
}
