package perkilo.report.order;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/** Rows that have a column for each month. */
final class MonthRows {

    private final SheetBuilder sheet;
    private final int firstColumn;
    private final List<YearMonth> months;

    /**
     * Rows on a sheet.
     *
     * @param firstColumn of the first month, from zero
     */
    MonthRows(SheetBuilder sheet, int firstColumn, List<YearMonth> months) {
        this.sheet = sheet;
        this.firstColumn = firstColumn;
        this.months = months;
    }

    SheetBuilder sheet() {
        return sheet;
    }

    /** How many months there are. */
    int count() {
        return months.size();
    }

    /** The column of a month, or so many columns after the last. */
    int column(int period) {
        return firstColumn + period;
    }

    /** Writes the months as heads of columns. */
    void heads(int row) {
        for (int period = 0; period < count(); period++) {
            sheet.text(row, column(period), months.get(period).toString(), Look.HEADER);
        }
    }

    /** Writes a figure for each month. */
    List<Expr> write(int row, String name, IntFunction<Expr> figure, NumberFormat format, Look look) {
        sheet.text(row, 0, name, Look.LABEL);
        List<Expr> cells = new ArrayList<>();
        for (int period = 0; period < count(); period++) {
            cells.add(sheet.value(row, column(period), figure.apply(period), format, look));
        }
        return cells;
    }

    /** Writes a figure for each month that the engine has computed in its own way as well. */
    List<Expr> checked(
            int row, String name, IntFunction<Expr> figure, IntFunction<BigDecimal> engine, NumberFormat format) {
        sheet.text(row, 0, name, Look.LABEL);
        List<Expr> cells = new ArrayList<>();
        for (int period = 0; period < count(); period++) {
            cells.add(
                    sheet.checked(row, column(period), figure.apply(period), engine.apply(period), format, Look.PLAIN));
        }
        return cells;
    }

    /** The sum of a row's first months. */
    Expr sum(int row, List<Expr> cells, int periods) {
        if (periods == 0) {
            return Expr.of(0);
        }
        BigDecimal value = cells.subList(0, periods).stream().map(Expr::value).reduce(BigDecimal.ZERO, BigDecimal::add);
        return Expr.sumOf(
                sheet.name(),
                SheetNames.cell(row, firstColumn) + ":" + SheetNames.cell(row, column(periods - 1)),
                value);
    }
}
