package perkilo.sheet.table;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.Sign;

/**
 * A conditional look: cells of a column whose look depends on their value, or on that of another column.
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

        /** The name of a cell, such as {@code D5}; references move along with the cells. */
        String cell(Column<R> column);
    }

    /** Marks cells whose own value is below or above zero, or the lowest of their column. */
    public static <R> Mark<R> where(ResultSheet.Condition condition, Look look) {
        return new Mark<>(condition, null, look);
    }

    /**
     * Marks cells for which a formula is true.
     *
     * @param formula for the table's first row, without its equals sign
     */
    public static <R> Mark<R> where(Function<FirstRow<R>, String> formula, Look look) {
        return new Mark<>(null, formula, look);
    }

    /** Marks cells for which a column's number is below zero by more than the error of binary fractions. */
    public static <R> Mark<R> belowZero(Column<R> column, Look look) {
        return where(first -> "ROUND(" + first.cell(column) + "," + Sign.DIGITS + ")<0", look);
    }

    /** Marks cells for which a column's words carry the sign that asks for attention, in any language. */
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
