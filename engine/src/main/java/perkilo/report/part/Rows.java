package perkilo.report.part;

import java.math.BigDecimal;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;

/** Writes one row after the other: a name, a figure, its unit and what it means. */
public final class Rows {

    private final SheetBuilder sheet;
    private int next;

    /**
     * Begins to write.
     *
     * @param first the first row, from zero
     */
    public Rows(SheetBuilder sheet, int first) {
        this.sheet = sheet;
        this.next = first;
    }

    /** The sheet that is written to. */
    public SheetBuilder sheet() {
        return sheet;
    }

    /** The row that will be written next, from zero. */
    public int next() {
        return next;
    }

    /** Leaves rows empty. */
    public Rows skip(int rows) {
        next += rows;
        return this;
    }

    /** Begins a part of the sheet. */
    public void section(String title, Look look) {
        sheet.text(next++, 0, title, look);
    }

    /** Writes the heads of columns, from the first column on. */
    public void heads(String... heads) {
        for (int column = 0; column < heads.length; column++) {
            sheet.text(next, column, heads[column], Look.HEADER);
        }
        next++;
    }

    /** Writes a named figure. */
    public Expr figure(String name, Expr expr, NumberFormat format, String unit, String meaning) {
        return figure(name, expr, format, unit, meaning, Origin.NONE);
    }

    /** Writes a named figure that leads to the cell it rests on. */
    public Expr figure(String name, Expr expr, NumberFormat format, String unit, String meaning, Origin link) {
        sheet.text(next, 0, name, Look.LABEL);
        sheet.text(next, 2, unit, Look.PLAIN);
        sheet.text(next, 3, meaning, Look.HINT);
        return sheet.value(next++, 1, expr, format, Look.PLAIN, link);
    }

    /** Writes a named figure that the engine has computed in its own way as well. */
    public Expr checked(String name, Expr expr, BigDecimal engine, NumberFormat format, String unit, String meaning) {
        sheet.text(next, 0, name, Look.LABEL);
        sheet.text(next, 2, unit, Look.PLAIN);
        sheet.text(next, 3, meaning, Look.HINT);
        return sheet.checked(next++, 1, expr, engine, format, Look.PLAIN);
    }
}
