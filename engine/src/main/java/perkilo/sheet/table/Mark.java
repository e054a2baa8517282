package perkilo.sheet.table;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.Sign;

/**
 * Cells of a column that change their look by their value, or by that of another column.
 *
 * @param <R> what a row of the table is about
 */
public final class Mark<R> {

    private final ResultSheet.@Nullable When when;
    private final @Nullable Function<FirstRow<R>, String> formula;
    private final Look look;

    private Mark(ResultSheet.@Nullable When when, @Nullable Function<FirstRow<R>, String> formula, Look look) {
        this.when = when;
        this.formula = formula;
        this.look = look;
    }

    /** The cells of the table's first row, by column, as a condition's formula writes them. */
    public interface FirstRow<R> {

        /** Such as {@code D5}: what the formula refers to moves along with the cells. */
        String cell(Column<R> column);
    }

    /** Where a cell's own value is below or above zero, or the lowest of its column. */
    public static <R> Mark<R> where(ResultSheet.Condition condition, Look look) {
        return new Mark<>(condition, null, look);
    }

    /**
     * Where a formula holds.
     *
     * @param formula for the table's first row, without its equals sign
     */
    public static <R> Mark<R> where(Function<FirstRow<R>, String> formula, Look look) {
        return new Mark<>(null, formula, look);
    }

    /** Where a column's number is below zero, but for what binary fractions leave of nothing. */
    public static <R> Mark<R> belowZero(Column<R> column, Look look) {
        return where(first -> "ROUND(" + first.cell(column) + "," + Sign.DIGITS + ")<0", look);
    }

    /** Where a column's words carry the sign that asks for attention, in whatever language they are. */
    public static <R> Mark<R> attention(Column<R> column, Look look) {
        return where(first -> Sign.isIn(first.cell(column)), look);
    }

    Look look() {
        return look;
    }

    ResultSheet.When when(FirstRow<R> first) {
        if (formula != null) {
            return new ResultSheet.Holds(formula.apply(first));
        }
        if (when == null) {
            throw new AssertionError("a mark has a condition or a formula");
        }
        return when;
    }
}
