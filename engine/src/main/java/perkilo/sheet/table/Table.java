package perkilo.sheet.table;

import java.util.ArrayList;
import java.util.List;
import perkilo.sheet.SheetBuilder;

/**
 * A declared table: its columns in order.
 *
 * @param <R> what a row is about
 * @param columns in the order in which they are shown
 */
public record Table<R>(List<Column<R>> columns) {

    public Table {
        columns = List.copyOf(columns);
    }

    /** A table of columns. */
    @SafeVarargs
    @SuppressWarnings("varargs") // the array is only copied
    public static <R> Table<R> of(Column<R>... columns) {
        List<Column<R>> all = new ArrayList<>(columns.length);
        for (Column<R> column : columns) {
            all.add(column);
        }
        return new Table<>(all);
    }

    /**
     * Places the table with rows on a sheet. Nothing is written yet, but its cells can be referred to.
     *
     * @param headRow the row of the headings, from zero; the rows follow it
     * @param rows the entries that the rows are about
     */
    public Placed<R> at(SheetBuilder sheet, int headRow, List<R> rows) {
        return new Placed<>(sheet, this, headRow, 0, true, rows);
    }

    /** Places the table like the method above, but from another first column. */
    public Placed<R> at(SheetBuilder sheet, int headRow, int firstColumn, List<R> rows) {
        return new Placed<>(sheet, this, headRow, firstColumn, true, rows);
    }

    /**
     * The table without headings on a sheet.
     *
     * @param firstRow from zero
     */
    public Placed<R> withoutHeadings(SheetBuilder sheet, int firstRow, List<R> rows) {
        return new Placed<>(sheet, this, firstRow - 1, 0, false, rows);
    }

    /** The same, from another column on. */
    public Placed<R> withoutHeadings(SheetBuilder sheet, int firstRow, int firstColumn, List<R> rows) {
        return new Placed<>(sheet, this, firstRow - 1, firstColumn, false, rows);
    }

    /** The table with rows, for JSON and the terminal. */
    public Filled<R> with(List<R> rows) {
        return new Filled<>(this, rows);
    }

    /** One row of the table, for JSON. */
    public One<R> one(R entry) {
        return new One<>(this, entry);
    }

    /** The columns that a sheet shows. */
    List<Column<R>> onSheet() {
        return columns.stream().filter(Column::isOnSheet).toList();
    }

    /**
     * A table with rows.
     *
     * @param <R> what a row is about
     * @param table its columns
     * @param rows what the rows are about
     */
    public record Filled<R>(Table<R> table, List<R> rows) {

        public Filled {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One row of a table.
     *
     * @param <R> what the row is about
     * @param table its columns
     * @param entry what the row is about
     */
    public record One<R>(Table<R> table, R entry) {}
}
