package perkilo.reading.table;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import perkilo.origin.Origin;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.SheetSchema;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * A table that was found on a sheet.
 *
 * @param schema what kind of table it is
 * @param grid the sheet
 * @param headerRow from zero
 * @param lastRow the last row that may belong to it, from zero
 * @param columns the place of each column that was found
 * @param region the part of the sheet that it takes, and what became of its rows
 */
public record FoundTable(
        SheetSchema schema, Grid grid, int headerRow, int lastRow, Map<InputColumn, Place> columns, Region region) {

    private static final Pattern TOTALS = Pattern.compile(
            "(?i)(grand |sub-? ?)?totals?( of)?( phase)?( \\w{1,3})?( %)?\\s*[:%]*|sum( %)?\\s*:?|Σ.*|batch total\\s*:?"
                    + "|(zwischen)?summe( %)?\\s*:?|gesamt(summe)?( %)?\\s*:?|somme\\s*:?|(sous-)?total( général)?\\s*:?"
                    + "|totale\\s*:?|suma\\s*:?");

    public FoundTable {
        columns = Map.copyOf(columns);
    }

    /**
     * A part of a sheet that was read by arranging it in another way; for the account of the reading alone.
     *
     * @param grid the person's sheet
     * @param headerRow from zero
     * @param lastRow the last row that may belong to it, from zero
     * @param read the rows that were read, and lines above the headers that say something of all rows
     * @param uses what each column is read as; other columns with a header are not read
     * @param covered the columns that the part takes
     * @param findings receives what is struck through
     */
    public static FoundTable ofPart(
            SheetSchema schema,
            Grid grid,
            int headerRow,
            int lastRow,
            BitSet read,
            Map<Integer, String> uses,
            BitSet covered,
            Findings findings) {
        int first = covered.nextSetBit(0);
        int last = covered.length() - 1;
        int end = Math.max(headerRow, lastRow);
        List<Integer> unknown = grid.row(headerRow).keySet().stream()
                .filter(column -> covered.get(column) && !uses.containsKey(column))
                .toList();
        int top = headerRow >= 0 && read.get(headerRow) ? headerRow : headerRow + 1; // there may be no headers
        Region region = new Region(top, headerRow, end, first, last, unknown);
        region.arranged(read, uses);
        for (int row = headerRow + 1; row <= end; row++) {
            region.note(row, read.get(row) ? Region.RowState.READ : Region.RowState.NOTE);
        }
        Map<InputColumn, Place> columns = new LinkedHashMap<>();
        uses.forEach((column, words) ->
                schema.column(words).ifPresent(known -> columns.putIfAbsent(known, new Place(column, ""))));
        FoundTable table = new FoundTable(schema, grid, headerRow, end, columns, region);
        new StruckCells(table, findings).find();
        return table;
    }

    /** The same table on the sheet that its own is a part of, with all places the same. */
    public FoundTable on(Grid sheet) {
        return new FoundTable(schema, sheet, headerRow, lastRow, columns, region);
    }

    /** The same table with the rows of the whole sheet, if it was found in the first rows alone. */
    public FoundTable downTo(Grid sheet, int last) {
        return new FoundTable(
                schema,
                sheet,
                headerRow,
                last,
                columns,
                new Region(
                        region.topRow(), headerRow, last, region.firstColumn(), region.lastColumn(), region.unknown()));
    }

    /** The rows that carry their key; others are reported if their key seems to be missing. */
    public List<TableRow> rows(Findings findings) {
        return stream(findings).toList();
    }

    /**
     * The rows that carry their key, one by one. Each row is read when it is asked for, so its cells are still in
     * memory while it is used.
     */
    public Stream<TableRow> stream(Findings findings) {
        List<InputColumn> keys = schema.keys().stream().filter(this::has).toList();
        NumberMarks marks = new NumberMarks(this);
        boolean anyKeyWillDo = !schema.required().containsAll(schema.keys());
        return IntStream.of(grid.rows().between(headerRow, lastRow + 1))
                .mapToObj(row -> new TableRow(this, row, marks, findings))
                .filter(row -> isRow(row, keys, anyKeyWillDo, findings));
    }

    /**
     * One of its rows, whether it carries its key or not.
     *
     * @param number the row of the sheet, from zero
     */
    public TableRow row(int number, Findings findings) {
        return new TableRow(this, number, new NumberMarks(this), findings);
    }

    /** The header of a column, or of the whole table where it has no such column. */
    public Origin header(InputColumn column) {
        Place place = columns.get(column);
        return place == null ? header() : grid.origin(headerRow, place.index());
    }

    /**
     * A column's name in messages: ours, and the person's own header if that is another word: {@code Price ("Preis")}.
     */
    String called(InputColumn column) {
        Place place = columns.get(column);
        if (place == null || !schema.columns().contains(column)) {
            return column.header();
        }
        String typed = grid.at(headerRow, place.index()).text();
        boolean same = typed.isEmpty() || HeaderText.key(typed).startsWith(HeaderText.key(column.bareHeader()));
        return same ? column.header() : column.header() + " (\"" + typed + "\")";
    }

    /** The header of a column as typed; ours if the table has no such column. */
    public String headerText(InputColumn column) {
        Place place = columns.get(column);
        return place == null ? column.header() : UnreadColumn.header(this, place.index());
    }

    /** The first header of the table. */
    public Origin header() {
        return grid.origin(Math.max(headerRow, 0), firstColumn());
    }

    /** The leftmost column that was found, from zero. */
    int firstColumn() {
        return columns.values().stream().mapToInt(Place::index).min().orElse(0);
    }

    /** What the header of prices says of their unit, with what a line above a row adds. */
    public String priceUnit(int row) {
        Place price = columns.get(OffersSheet.PRICE);
        return price == null ? "" : region.priceUnit(row, price.unit());
    }

    /** Whether the table has a column. */
    public boolean has(InputColumn column) {
        return columns.containsKey(column);
    }

    private boolean isRow(TableRow row, List<InputColumn> keys, boolean anyKeyWillDo, Findings findings) {
        Region.RowState state = state(row, keys, anyKeyWillDo, findings);
        region.note(row.number(), state);
        return state == Region.RowState.READ;
    }

    /** What becomes of a row below the headers. */
    Region.RowState state(int row) {
        Region.RowState known = region.state(row);
        if (known != Region.RowState.UNKNOWN) {
            return known;
        }
        List<InputColumn> keys = schema.keys().stream().filter(this::has).toList();
        Findings unsaid = new Findings();
        boolean anyKeyWillDo = !schema.required().containsAll(schema.keys());
        return state(new TableRow(this, row, new NumberMarks(this), unsaid), keys, anyKeyWillDo, unsaid);
    }

    private Region.RowState state(TableRow row, List<InputColumn> keys, boolean anyKeyWillDo, Findings findings) {
        if (region.struckRows().get(row.number())) {
            return Region.RowState.STRUCK;
        }
        int blank = 0;
        for (InputColumn key : keys) {
            blank += row.isBlank(key) ? 1 : 0;
        }
        if (blank == keys.size() || (!anyKeyWillDo && blank > 0)) {
            return withoutKey(row, keys.stream().filter(row::isBlank).toList(), findings);
        }
        return isTotal(row, keys) ? Region.RowState.TOTAL : Region.RowState.READ;
    }

    private static boolean isTotal(TableRow row, List<InputColumn> keys) {
        for (InputColumn key : keys) {
            String text = row.cell(key).text();
            if (mayBeTotal(text) && TOTALS.matcher(text).matches()) {
                return true;
            }
        }
        return false;
    }

    /** Whether a text begins like a word for totals. */
    private static boolean mayBeTotal(String text) {
        return !text.isEmpty() && "gGsStTbBzZΣ".indexOf(text.charAt(0)) >= 0;
    }

    /** Reports a row without its key if it has words and numbers, unless it is a row of totals. */
    private Region.RowState withoutKey(TableRow row, List<InputColumn> blank, Findings findings) {
        List<Cell> others = columns.keySet().stream()
                .map(row::cell)
                .filter(cell -> !cell.isBlank())
                .toList();
        boolean words = others.stream().anyMatch(cell -> cell.kind() == Cell.Kind.TEXT);
        boolean numbers = others.stream().anyMatch(cell -> cell.kind() == Cell.Kind.NUMBER);
        boolean total =
                others.stream().anyMatch(cell -> TOTALS.matcher(cell.text()).matches());
        if (words && numbers && !total && !blank.isEmpty()) {
            findings.warning(row.origin(blank.get(0)), TableMessages.noKey(called(blank.get(0))));
            return Region.RowState.WITHOUT_KEY;
        }
        return total ? Region.RowState.TOTAL : Region.RowState.NOTE;
    }

    /**
     * The place of a column.
     *
     * @param index from zero
     * @param unit what its header says of the unit; empty for nothing
     */
    public record Place(int index, String unit) {}
}
