package perkilo.sheet.table;

import java.util.List;
import perkilo.sheet.Expr;

/**
 * A row of a placed table, as a column's formula sees it.
 *
 * @param <R> what the row is about
 * @param entry what this row is about
 * @param index of the row in its table, from zero
 * @param table the table
 */
public record Row<R>(R entry, int index, Placed<R> table) {

    /** The row's cell in another column, for use in a formula. */
    public Expr ref(Column<R> column) {
        return table.ref(index, column);
    }

    /** Whether the row's cell in another column holds a figure. */
    public boolean has(Column<R> column) {
        return table.hasFigure(index, column);
    }

    /** The sum of the row's cells in columns beside each other; zero for no columns. */
    public Expr sum(List<Column<R>> columns) {
        return table.sum(index, columns);
    }

    /** The sum of a column's cells in the rows above this one; zero for the first row. */
    public Expr sumAbove(Column<R> column) {
        return index == 0 ? Expr.of(0) : table.sum(column, 0, index - 1);
    }
}
