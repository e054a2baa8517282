package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.origin.SeenTable;
import perkilo.schema.InputColumn;
import perkilo.schema.Limits;
import perkilo.schema.SettingsSheet;
import perkilo.schema.ValueKind;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Keeps what the cells of the tables of a workbook held. */
public final class SeenTables {

    /** The most rows of a table whose cells are kept; of more, only sums. */
    private static final int LONG = 3000;

    private static final int BESIDE = 12;
    private static final int BELOW = 200;
    private static final int PER_CENT = 100;

    private final FoundTable table;
    private final Grid grid;
    private final Map<Integer, InputColumn> columns = new TreeMap<>();
    private final Map<Integer, String> others = new TreeMap<>();
    private final int first;
    private final int last;

    private SeenTables(FoundTable table) {
        this.table = table;
        this.grid = table.grid();
        table.columns().forEach((column, place) -> columns.put(place.index(), column));
        table.region().arrangedUses().forEach((column, words) -> {
            if (!columns.containsKey(column)) {
                others.put(column, words);
            }
        });
        this.first = Math.max(0, table.headerRow() + 1);
        this.last = lastFilled();
    }

    /**
     * What tables held.
     *
     * @param tables as they are on the person's sheets
     */
    public static List<SeenTable> of(List<FoundTable> tables) {
        List<SeenTable> seen = new ArrayList<>();
        for (FoundTable table : tables) {
            if (table.grid().ofBook()) {
                seen.add(new SeenTables(table).seen());
            }
        }
        seen.sort(Comparator.comparing(SeenTable::kind).thenComparing(SeenTable::sheet));
        return seen;
    }

    private int lastFilled() {
        int row = table.lastRow();
        while (row >= first && !isFilled(row)) {
            row--;
        }
        return row;
    }

    private boolean isFilled(int row) {
        for (int column : grid.row(row).keySet()) {
            if (columns.containsKey(column) || others.containsKey(column)) {
                return true;
            }
        }
        return false;
    }

    private SeenTable seen() {
        List<SeenTable.Part> parts = new ArrayList<>();
        BitSet hidden = grid.aside().hiddenRows();
        for (int from = first; from <= last; from++) {
            int to = hidden.nextSetBit(from);
            int end = to < 0 ? last : Math.min(last, to - 1);
            if (end >= from) {
                add(parts, from, end);
                from = end;
            }
        }
        return new SeenTable(grid.sheet(), table.schema().name(), frame(), parts);
    }

    private SeenTable.Frame frame() {
        int left = Math.min(table.region().firstColumn(), firstColumn());
        int right = Math.max(table.region().lastColumn(), left);
        int headingsTo = right + BESIDE;
        int hidden = grid.aside().hiddenRows().nextSetBit(last + 1);
        int belowTo = hidden < 0 ? last + BELOW : Math.min(last + BELOW, hidden - 1);
        int headings = table.headerRow() < 0 ? 0 : filled(table.headerRow(), left, headingsTo);
        int below = 0;
        for (int row = last + 1; row <= belowTo; row++) {
            below += filled(row, left, right);
        }
        return new SeenTable.Frame(table.headerRow(), last, left, right, headings, headingsTo, below, belowTo);
    }

    private int firstColumn() {
        return columns.keySet().stream().findFirst().orElse(0);
    }

    private int filled(int row, int from, int to) {
        return grid.row(row).subMap(from, true, to, true).size();
    }

    private void add(List<SeenTable.Part> parts, int from, int to) {
        columns.forEach((index, column) -> {
            if (column.equals(SettingsSheet.VALUE) && table.schema().equals(SettingsSheet.SCHEMA)) {
                addSettings(parts, index, from, to);
            } else {
                parts.add(part(column.header(), column, index, from, to));
            }
        });
        others.forEach((index, words) -> parts.add(part(words, null, index, from, to)));
    }

    private void addSettings(List<SeenTable.Part> parts, int index, int from, int to) {
        ColumnNames names = new ColumnNames(SettingsSheet.SETTINGS);
        FoundTable.Place name = table.columns().get(SettingsSheet.SETTING);
        for (int row = from; row <= to; row++) {
            String typed = name == null ? "" : grid.at(row, name.index()).text();
            InputColumn setting =
                    names.find(typed).map(ColumnNames.Named::column).orElse(null);
            if (setting != null) {
                parts.add(part(setting.header(), setting, index, row, row));
            }
        }
    }

    private SeenTable.Part part(String name, @Nullable InputColumn column, int index, int from, int to) {
        int rows = to - from + 1;
        boolean isLong = last - first >= LONG;
        List<Object> cells = isLong ? null : cells(index, from, to);
        return new SeenTable.Part(
                name, index, from, rows, cells, isLong ? sums(index, from, to) : null, range(column, index, from, to));
    }

    private List<Object> cells(int index, int from, int to) {
        List<Object> cells = new ArrayList<>();
        for (int row = from; row <= to; row++) {
            cells.add(content(grid.at(row, index)));
        }
        return cells;
    }

    private static Object content(Cell cell) {
        if (cell.number() != null) {
            return cell.number();
        }
        return cell.date() == null ? cell.typed() : cell.date();
    }

    private SeenTable.Sums sums(int index, int from, int to) {
        long filled = 0;
        long numbers = 0;
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal lengths = BigDecimal.ZERO;
        for (int row = from; row <= to; row++) {
            Cell cell = grid.at(row, index);
            BigDecimal number = cell.number();
            filled += cell.isBlank() ? 0 : 1;
            numbers += number != null || cell.date() != null ? 1 : 0;
            sum = number == null ? sum : sum.add(number);
            lengths = lengths.add(
                    BigDecimal.valueOf((row - from + 1L) * cell.typed().length()));
        }
        return new SeenTable.Sums(filled, numbers, sum, lengths);
    }

    private SeenTable.Range range(@Nullable InputColumn column, int index, int from, int to) {
        if (column == null || column.kind() == ValueKind.DATE) {
            return new SeenTable.Range(column != null, List.of(), false);
        }
        boolean percents = column.kind().isPercent();
        List<Cell> numbers = new ArrayList<>();
        for (int row = from; row <= to; row++) {
            Cell cell = grid.at(row, index);
            if (cell.number() != null) {
                numbers.add(cell);
            }
        }
        boolean shown = percents && !numbers.isEmpty() && numbers.stream().allMatch(Cell::isPercentFormat);
        Limits limits = column.kind().isNumber() ? column.limits() : Limits.ANY;
        boolean inside = numbers.stream().allMatch(cell -> limits.allow(asTyped(cell)));
        boolean whole = numbers.stream().allMatch(cell -> isWhole(cell));
        return new SeenTable.Range(
                false,
                inside ? limits.outside(shown ? PER_CENT : 1) : List.of(),
                whole && column.kind() == ValueKind.WHOLE);
    }

    private static BigDecimal asTyped(Cell cell) {
        BigDecimal number = cell.number() == null ? BigDecimal.ZERO : cell.number();
        return cell.isPercentFormat() ? number.movePointRight(2) : number;
    }

    private static boolean isWhole(Cell cell) {
        return cell.number() != null && cell.number().stripTrailingZeros().scale() <= 0;
    }
}
