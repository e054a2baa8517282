package perkilo.report.part;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/**
 * Writes a sheet from top to bottom: lines with a name, a figure, its unit and its meaning, and tables between them.
 */
public final class Lines {

    private static final Column<Line> NAME =
            Column.<Line>of("name", "").words(Line::name).look(Look.LABEL);
    private static final Column<Line> FIGURE = Column.<Line>of("figure", "")
            .formula(row -> row.entry().figure())
            .value(Line::engine)
            .format(Line::format)
            .link(Line::link);
    private static final Column<Line> UNIT = Column.<Line>of("unit", "").words(Line::unit);
    private static final Column<Line> MEANING =
            Column.<Line>of("meaning", "").words(Line::meaning).look(Look.HINT);
    private static final Table<Line> TABLE = Table.of(NAME, FIGURE, UNIT, MEANING);

    private final SheetBuilder sheet;
    private int next;

    /** One line. */
    private record Line(
            String name,
            Expr figure,
            @Nullable BigDecimal engine,
            NumberFormat format,
            String unit,
            String meaning,
            Origin link) {}

    /**
     * Begins to write.
     *
     * @param first the first row, from zero
     */
    public Lines(SheetBuilder sheet, int first) {
        this.sheet = sheet;
        this.next = first;
    }

    /** The sheet that is written to. */
    public SheetBuilder sheet() {
        return sheet;
    }

    /** The next row, from zero. */
    public int next() {
        return next;
    }

    /** Leaves rows empty. */
    public Lines skip(int rows) {
        next += rows;
        return this;
    }

    /** Begins a part of the sheet. */
    public void section(String title) {
        sheet.section(next++, title);
    }

    /** Writes an explanation. */
    public void hint(String text) {
        sheet.hint(next++, text);
    }

    /** Places a table below the last row; {@link #write} writes it. */
    public <R> Placed<R> place(Table<R> table, List<R> rows) {
        return table.at(sheet, next, rows);
    }

    /** Writes a table placed here, and continues below it. */
    public <R> Placed<R> write(Placed<R> placed) {
        placed.write();
        next = placed.next();
        return placed;
    }

    /** The cell of the next line's figure, for conditions: {@code $B$7}. */
    public String nextFigure() {
        return TABLE.withoutHeadings(sheet, next, List.of()).absolute(0, FIGURE);
    }

    /** Writes a named figure. */
    public Expr figure(String name, Expr expr, NumberFormat format, String unit, String meaning) {
        return figure(name, expr, format, unit, meaning, Origin.NONE);
    }

    /** Writes a named figure with a link to its cell. */
    public Expr figure(String name, Expr expr, NumberFormat format, String unit, String meaning, Origin link) {
        return write(new Line(name, expr, null, format, unit, meaning, link));
    }

    /** Writes a named figure and compares it with the engine's own. */
    public Expr checked(String name, Expr expr, BigDecimal engine, NumberFormat format, String unit, String meaning) {
        return write(new Line(name, expr, engine, format, unit, meaning, Origin.NONE));
    }

    /** Writes a named entry with words instead of a figure. */
    public void words(String name, String text, String meaning) {
        Placed<Line> line = TABLE.withoutHeadings(sheet, next, List.of());
        sheet.text(next, line.column(NAME), name, Look.LABEL)
                .text(next, line.column(FIGURE), text, Look.PLAIN)
                .text(next, line.column(MEANING), meaning, Look.HINT);
        next++;
    }

    private Expr write(Line line) {
        return write(TABLE.withoutHeadings(sheet, next, List.of(line))).ref(0, FIGURE);
    }
}
