package perkilo.report.order;

import java.math.BigDecimal;
import java.util.IdentityHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Row;

/** A row on the sheet of stock: its name, and a figure in some of the columns. */
final class StockLine {

    private final String name;
    private final Origin link;
    private final @Nullable String until;
    private final IdentityHashMap<Column<StockLine>, Figure> figures = new IdentityHashMap<>();

    private record Figure(
            Function<Row<StockLine>, Expr> live, @Nullable BigDecimal engine, NumberFormat format, Look look) {}

    /**
     * A row.
     *
     * @param link the cell that its name leads to
     * @param until the last day that a lot may be used, in words; null for other rows
     */
    StockLine(String name, Origin link, @Nullable String until) {
        this.name = name;
        this.link = link;
        this.until = until;
    }

    /** A row of figures. */
    StockLine(String name) {
        this(name, Origin.NONE, null);
    }

    /**
     * Puts a figure into a column.
     *
     * @param engine the value that the engine computed by itself; null if it did not
     */
    StockLine put(
            Column<StockLine> column,
            Function<Row<StockLine>, Expr> live,
            @Nullable BigDecimal engine,
            NumberFormat format,
            Look look) {
        figures.put(column, new Figure(live, engine, format, look));
        return this;
    }

    /** A column with the figures that the rows have put into it. */
    static Column<StockLine> figures(String key, String heading) {
        Column<StockLine> column = Column.of(key, heading);
        return column.value(line -> line.engine(column))
                .formula(row -> row.entry().live(column, row))
                .format(line -> line.format(column))
                .look(line -> line.look(column));
    }

    String name() {
        return name;
    }

    Origin link() {
        return link;
    }

    @Nullable String until() {
        return until;
    }

    private @Nullable BigDecimal engine(Column<StockLine> column) {
        Figure figure = figures.get(column);
        return figure == null ? null : figure.engine();
    }

    private @Nullable Expr live(Column<StockLine> column, Row<StockLine> row) {
        Figure figure = figures.get(column);
        return figure == null ? null : figure.live().apply(row);
    }

    private NumberFormat format(Column<StockLine> column) {
        Figure figure = figures.get(column);
        return figure == null ? NumberFormat.GENERAL : figure.format();
    }

    private Look look(Column<StockLine> column) {
        Figure figure = figures.get(column);
        return figure == null ? Look.PLAIN : figure.look();
    }
}
