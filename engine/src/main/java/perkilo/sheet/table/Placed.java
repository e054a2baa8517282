package perkilo.sheet.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/**
 * A table with rows, placed on a sheet.
 *
 * <p>Its cells can be referred to before it is {@link #write written}, from its own formulas and from other tables': a
 * cell is computed when it is first needed.
 *
 * @param <R> what a row is about
 */
public final class Placed<R> {

    private final SheetBuilder sheet;
    private final Table<R> table;
    private final int headRow;
    private final int firstColumn;
    private final boolean headed;
    private final List<R> rows;
    private final IdentityHashMap<Column<R>, Integer> places = new IdentityHashMap<>();
    private final IdentityHashMap<Column<R>, @Nullable Figure[]> figures = new IdentityHashMap<>();
    private @Nullable IdentityHashMap<R, Integer> indexes;

    /** The figure in a cell; null if it holds none. */
    private record Figure(@Nullable Expr expr) {

        /** Marks a cell that is being computed, to find formulas that refer to themselves. */
        static final Figure IN_WORK = new Figure(null);
    }

    Placed(SheetBuilder sheet, Table<R> table, int headRow, int firstColumn, boolean headed, List<R> rows) {
        this.sheet = sheet;
        this.table = table;
        this.headRow = headRow;
        this.firstColumn = firstColumn;
        this.headed = headed;
        this.rows = List.copyOf(rows);
        int place = firstColumn;
        for (Column<R> column : table.columns()) {
            if (column.isOnSheet()) {
                places.put(column, place++);
            }
        }
    }

    /** Sets the widths of the sheet's columns without writing anything, for a table that may have no rows. */
    public Placed<R> widen() {
        for (Map.Entry<Column<R>, Integer> each : places.entrySet()) {
            if (each.getKey().width() > 0) {
                sheet.widthAtLeast(each.getValue(), each.getKey().width());
            }
        }
        return this;
    }

    /** Writes the headings, the rows and the marks. */
    public Placed<R> write() {
        widen();
        for (Column<R> column : table.columns()) {
            if (column.isOnSheet()) {
                write(column);
            }
        }
        return this;
    }

    private void write(Column<R> column) {
        int place = column(column);
        if (headed && column.isHeaded()) {
            sheet.text(headRow, place, column.heading(), Look.HEADER);
        }
        for (int index = 0; index < rows.size(); index++) {
            write(column, index, place);
        }
        if (!rows.isEmpty()) {
            for (Mark<R> mark : column.marks()) {
                ResultSheet.When when = mark.when(other -> address(0, other));
                sheet.highlight(row(0), place, row(rows.size() - 1), place, when, mark.look());
            }
        }
        writeTotal(column, place);
    }

    private void writeTotal(Column<R> column, int place) {
        int row = row(rows.size());
        Expr total = column.totalOf(this);
        String words = column.totalWords();
        if (total != null) {
            BigDecimal engine = column.totalEngine();
            NumberFormat format = column.totalFormat(rows);
            if (engine == null) {
                sheet.value(row, place, total, format, column.totalLook());
            } else {
                sheet.checked(row, place, total, engine, format, column.totalLook());
            }
        } else if (words != null) {
            sheet.text(row, place, words, column.totalLook());
        }
    }

    private void write(Column<R> column, int index, int place) {
        R entry = rows.get(index);
        if (column.isFillIn()) {
            String answer = column.wordsOf(entry);
            sheet.fillIn(row(index), place, answer == null ? "" : answer, column.choicesOf(entry));
            return;
        }
        List<ResultSheet.Part> sentence = column.sentenceOf(new Row<>(entry, index, this));
        if (sentence != null) {
            if (!sentence.isEmpty()) {
                sheet.sentence(row(index), place, column.lookOf(entry), column.linkOf(entry), sentence);
            }
            return;
        }
        Expr figure = figure(index, column);
        if (figure != null) {
            writeFigure(column, entry, figure, row(index), place);
            return;
        }
        String words = column.wordsOf(entry);
        if (words == null) {
            return;
        }
        String file = column.fileOf(entry);
        if (file == null) {
            sheet.text(row(index), place, words, column.wordsLookOf(entry), column.linkOf(entry));
        } else {
            sheet.fileName(row(index), place, words, column.wordsLookOf(entry), file);
        }
    }

    private void writeFigure(Column<R> column, R entry, Expr figure, int row, int place) {
        NumberFormat format = column.formatOf(entry);
        Look look = column.lookOf(entry);
        Origin link = column.linkOf(entry);
        BigDecimal engine = column.valueOf(entry);
        if (engine == null) {
            sheet.value(row, place, figure, format, look, link);
        } else {
            sheet.checked(row, place, figure, engine, format, look, link);
        }
    }

    /** The entries of the rows. */
    public List<R> rows() {
        return rows;
    }

    /** The sheet that holds the table. */
    public SheetBuilder sheet() {
        return sheet;
    }

    /** The row of an entry on the sheet, from zero. */
    public int row(int index) {
        return headRow + 1 + index;
    }

    /** The row after the last one and the totals, from zero. */
    public int next() {
        return row(rows.size()) + (hasTotals() ? 1 : 0);
    }

    private boolean hasTotals() {
        for (Column<R> column : table.columns()) {
            if (column.hasTotal()) {
                return true;
            }
        }
        return false;
    }

    /** A column's cell in the row of totals, for use in a formula; a plain zero if it has none. */
    public Expr total(Column<R> column) {
        Expr total = column.totalOf(this);
        String cell = SheetNames.cell(row(rows.size()), column(column));
        return total == null ? Expr.of(0) : Expr.cell(sheet.name(), cell, total.value());
    }

    /** The column after the last one, from zero. */
    public int nextColumn() {
        return firstColumn + places.size();
    }

    /** A column's place on the sheet, from zero. */
    public int column(Column<R> column) {
        Integer place = places.get(column);
        if (place == null) {
            throw new IllegalArgumentException("the column " + column.key() + " is not on the sheet " + sheet.name());
        }
        return place;
    }

    /** A cell's name, such as {@code D5}. */
    public String address(int index, Column<R> column) {
        return SheetNames.cell(row(index), column(column));
    }

    /** A cell's name that stays when a formula is copied, such as {@code $D$5}. */
    public String absolute(int index, Column<R> column) {
        return SheetNames.absolute(row(index), column(column));
    }

    /** The place of a cell, for links. */
    public Origin origin(int index, Column<R> column) {
        return new Origin("", sheet.name(), address(index, column));
    }

    /** The figure in a cell, as a reference to it; a plain zero if the cell is empty. */
    public Expr ref(int index, Column<R> column) {
        Expr figure = figure(index, column);
        return figure == null ? Expr.of(0) : Expr.cell(sheet.name(), address(index, column), figure.value());
    }

    /** The figure in a cell of an entry's row, as a reference to it; a plain zero if the cell is empty. */
    public Expr ref(R entry, Column<R> column) {
        return ref(indexOf(entry), column);
    }

    /** The index of an entry's row; finds the same object, not an equal one. */
    public int indexOf(R entry) {
        IdentityHashMap<R, Integer> known = indexes;
        if (known == null) {
            known = new IdentityHashMap<>();
            for (int index = 0; index < rows.size(); index++) {
                known.put(rows.get(index), index);
            }
            indexes = known;
        }
        Integer index = known.get(entry);
        if (index == null) {
            throw new IllegalArgumentException("no row of " + sheet.name() + " is about " + entry);
        }
        return index;
    }

    /** Whether a cell holds a figure. */
    public boolean hasFigure(int index, Column<R> column) {
        return figure(index, column) != null;
    }

    /** The sum of a column. */
    public Expr sum(Column<R> column) {
        return sum(column, 0, rows.size() - 1);
    }

    /** The sum of a column from one row to another, both included; a plain zero for no rows. */
    public Expr sum(Column<R> column, int from, int to) {
        BigDecimal sum = BigDecimal.ZERO;
        for (BigDecimal number : numbers(column, from, to)) {
            sum = sum.add(number);
        }
        return from > to ? Expr.of(0) : Expr.sumOf(sheet.name(), rectangle(column, from, to), sum);
    }

    /**
     * The sum of a row's cells in columns beside each other; a plain zero for no columns.
     *
     * @throws IllegalArgumentException if the columns are not beside each other on the sheet, in this order
     */
    public Expr sum(int index, List<Column<R>> columns) {
        if (columns.isEmpty()) {
            return Expr.of(0);
        }
        Column<R> first = columns.get(0);
        BigDecimal sum = BigDecimal.ZERO;
        for (int each = 0; each < columns.size(); each++) {
            Column<R> column = columns.get(each);
            if (column(column) != column(first) + each) {
                throw new IllegalArgumentException("the column " + column.key() + " does not follow the one before");
            }
            Expr figure = figure(index, column);
            sum = figure == null ? sum : sum.add(figure.value());
        }
        return Expr.sumOf(sheet.name(), rectangle(index, first, columns.get(columns.size() - 1)), sum);
    }

    /** The lowest number of a column; a plain zero for no rows. */
    public Expr lowest(Column<R> column) {
        List<BigDecimal> numbers = numbers(column, 0, rows.size() - 1);
        BigDecimal lowest = numbers.isEmpty() ? BigDecimal.ZERO : numbers.get(0);
        for (BigDecimal number : numbers) {
            lowest = lowest.min(number);
        }
        return rows.isEmpty() ? Expr.of(0) : Expr.lowestOf(sheet.name(), rectangle(column, 0, rows.size() - 1), lowest);
    }

    /** The range of a column's cells, for a chart. */
    public Chart.Range range(Column<R> column) {
        return range(column, 0, rows.size() - 1);
    }

    /** The range of a column's cells from one row to another, both included, for a chart. */
    public Chart.Range range(Column<R> column, int from, int to) {
        return new Chart.Range(sheet.name(), rectangle(column, from, to));
    }

    /** The range of a row's cells from one column to another, both included, for a chart. */
    public Chart.Range range(int index, Column<R> from, Column<R> to) {
        return new Chart.Range(sheet.name(), rectangle(index, from, to));
    }

    /** The range of the headings from one column to another, both included, for a chart. */
    public Chart.Range headings(Column<R> from, Column<R> to) {
        return new Chart.Range(
                sheet.name(), SheetNames.cell(headRow, column(from)) + ":" + SheetNames.cell(headRow, column(to)));
    }

    /** Marks cells of one row alone, from one column to another, both included. */
    public Placed<R> mark(R entry, Column<R> from, Column<R> to, Mark<R> mark) {
        int index = indexOf(entry);
        ResultSheet.When when = mark.when(other -> address(index, other));
        sheet.highlight(row(index), column(from), row(index), column(to), when, mark.look());
        return this;
    }

    /** Lets the table be filtered. */
    public Placed<R> filter() {
        int last = nextColumn() - 1;
        if (!rows.isEmpty()) {
            sheet.filter(headRow, firstColumn, row(rows.size() - 1), last);
        }
        return this;
    }

    /**
     * Prints the table on pages side by side, with its headings and first columns on each page.
     *
     * @param lastOnEach the last column that is repeated on every page
     * @param last the last column that is printed
     * @param beginPages columns that begin a new page
     */
    public Placed<R> pages(Column<R> lastOnEach, Column<R> last, List<Column<R>> beginPages) {
        List<Integer> breaks = beginPages.stream().map(this::column).toList();
        sheet.pages(new ResultSheet.Pages(row(rows.size() - 1), column(last), headRow, column(lastOnEach) + 1, breaks));
        return this;
    }

    private String rectangle(int index, Column<R> from, Column<R> to) {
        return address(index, from) + ":" + address(index, to);
    }

    private String rectangle(Column<R> column, int from, int to) {
        return address(from, column) + ":" + address(to, column);
    }

    private List<BigDecimal> numbers(Column<R> column, int from, int to) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (int index = from; index <= to; index++) {
            Expr figure = figure(index, column);
            if (figure != null) {
                numbers.add(figure.value());
            }
        }
        return numbers;
    }

    @SuppressWarnings("ReferenceEquality") // compares with the mark object itself
    private @Nullable Expr figure(int index, Column<R> column) {
        @Nullable Figure[] known = figures.computeIfAbsent(column, any -> new Figure[rows.size()]);
        Figure figure = known[index];
        if (figure == Figure.IN_WORK) {
            throw new IllegalStateException("the formulas of " + sheet.name() + " run in a circle at " + column.key());
        }
        if (figure == null) {
            known[index] = Figure.IN_WORK;
            figure = new Figure(column.figureOf(new Row<>(rows.get(index), index, this)));
            known[index] = figure;
        }
        return figure.expr();
    }
}
