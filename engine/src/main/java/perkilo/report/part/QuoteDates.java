package perkilo.report.part;

import java.time.LocalDate;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;

/**
 * The dates of the quotes that a sheet uses, marked if they have ended or soon will. The marks follow their cells: the
 * day, the limits and the dates.
 */
public final class QuoteDates {

    private static final String JUDGED = "Quotes are checked on";
    private static final String LEGEND =
            "orange background: the quote ended before this day or is older than the limit; not dated: its date is unknown";

    /** Shown instead of an unknown date. */
    public static final String UNKNOWN = "not dated";

    /** The number of days before its end from which a quote is marked. Common practice, no source. */
    private static final long SOON_DAYS = 30;

    private final Supplier<String> day;
    private final String limit;
    private final String soon;

    private QuoteDates(Supplier<String> day, String limit, String soon) {
        this.day = day;
        this.limit = limit;
        this.soon = soon;
    }

    /**
     * Writes the day and limits for checking quotes, in three lines.
     *
     * @param on the day on which they should be valid
     * @param ageLimit in days
     */
    public static QuoteDates write(Lines lines, LocalDate on, Figure ageLimit) {
        String day = lines.nextFigure();
        lines.figure(JUDGED, Expr.day(on), NumberFormat.DATE, "", LEGEND);
        return limits(lines, day, ageLimit);
    }

    /**
     * The same, if each order has its own day; {@link #seenOn} sets it.
     *
     * @param ageLimit in days
     */
    public static QuoteDates writeForOrders(Lines lines, Figure ageLimit) {
        String day = lines.nextFigure();
        lines.words(JUDGED, "the order day", LEGEND);
        return limits(lines, day, ageLimit);
    }

    private static QuoteDates limits(Lines lines, String day, Figure ageLimit) {
        String limit = lines.nextFigure();
        lines.figure(
                "Price age limit",
                Expr.input(ageLimit),
                NumberFormat.WHOLE,
                "days",
                "ask for a new quote when it is older",
                ageLimit.origin());
        String soon = lines.nextFigure();
        lines.figure(
                "Warn before the end",
                Expr.of(SOON_DAYS),
                NumberFormat.WHOLE,
                "days",
                "orange text: at most this many days are left (common practice)");
        return new QuoteDates(() -> day, limit, soon);
    }

    /**
     * The same limits, for a day in another cell.
     *
     * @param cell such as {@code $D$5}; asked for when the marks are written
     */
    public QuoteDates seenOn(Supplier<String> cell) {
        return new QuoteDates(cell, limit, soon);
    }

    /** A column of the days of quotes, marked by their age. */
    public <R> Column<R> quotedOn(String key, String heading, Function<R, @Nullable LocalDate> date) {
        Column<R> column = dates(key, heading, date);
        column.mark(when(column, cell -> day.get() + "-" + cell + ">" + limit, Look.WARNING));
        return column.mark(when(
                column,
                cell -> day.get() + "-" + cell + "<=" + limit + "," + day.get() + "-" + cell + ">=" + limit + "-"
                        + soon,
                Look.NOTICE));
    }

    /** A column of last days, marked if they have passed or soon will. */
    public <R> Column<R> validUntil(String key, String heading, Function<R, @Nullable LocalDate> date) {
        Column<R> column = dates(key, heading, date);
        column.mark(when(column, cell -> cell + "-" + day.get() + "<0", Look.WARNING));
        return column.mark(when(
                column, cell -> cell + "-" + day.get() + ">=0," + cell + "-" + day.get() + "<=" + soon, Look.NOTICE));
    }

    /** A column of dates, with words for unknown ones. */
    public static <R> Column<R> dates(String key, String heading, Function<R, @Nullable LocalDate> date) {
        return Column.<R>of(key, heading)
                .formula(row -> {
                    LocalDate known = date.apply(row.entry());
                    return known == null ? null : Expr.day(known);
                })
                .words(entry -> date.apply(entry) == null ? UNKNOWN : null)
                .wordsLook(Look.HINT)
                .format(NumberFormat.DATE);
    }

    /** A word takes no mark. */
    private static <R> Mark<R> when(Column<R> column, Function<String, String> holds, Look look) {
        return Mark.where(
                first -> "IF(ISNUMBER(" + first.cell(column) + "),AND(" + holds.apply(first.cell(column)) + "),FALSE)",
                look);
    }
}
