package perkilo.report.part;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/**
 * The dates of the quotes that a sheet rests on, marked where they have ended, and where they soon will. The marks
 * follow their cells: the day, the limits and the dates.
 */
public final class QuoteDates {

    /** The heads of the two columns. */
    public static final List<String> HEADS = List.of("Quoted on", "Valid until");

    private static final String JUDGED = "Quotes judged on";
    private static final String LEGEND =
            "dates of quotes on orange ground: ended before this day, or older than the limit; not dated: not known";
    private static final String UNKNOWN = "not dated";

    /** How many days before its end a quote is pointed out. Common practice, no source. */
    private static final long SOON_DAYS = 30;

    private final SheetBuilder sheet;
    private final String day;
    private final String limit;
    private final String soon;

    private QuoteDates(SheetBuilder sheet, String day, String limit, String soon) {
        this.sheet = sheet;
        this.day = day;
        this.limit = limit;
        this.soon = soon;
    }

    /**
     * Writes what quotes are held against, in three rows.
     *
     * @param on the day that they should hold on
     * @param ageLimit in days
     */
    public static QuoteDates write(Rows rows, LocalDate on, Figure ageLimit) {
        String day = next(rows);
        rows.figure(JUDGED, Expr.day(on), NumberFormat.DATE, "", LEGEND);
        return limits(rows, day, ageLimit);
    }

    /**
     * Writes what quotes are held against where each order has its own day, in three rows; {@link #seenOn} says which.
     *
     * @param ageLimit in days
     */
    public static QuoteDates writeForOrders(Rows rows, Figure ageLimit) {
        String day = next(rows);
        rows.sheet()
                .text(rows.next(), 0, JUDGED, Look.LABEL)
                .text(rows.next(), 1, "ordered by", Look.PLAIN)
                .text(rows.next(), 3, LEGEND, Look.HINT);
        rows.skip(1);
        return limits(rows, day, ageLimit);
    }

    private static QuoteDates limits(Rows rows, String day, Figure ageLimit) {
        String limit = next(rows);
        rows.figure(
                "Price age limit",
                Expr.input(ageLimit),
                NumberFormat.WHOLE,
                "days",
                "an older quote should be asked for again",
                ageLimit.origin());
        String soon = next(rows);
        rows.figure(
                "Soon",
                Expr.of(SOON_DAYS),
                NumberFormat.WHOLE,
                "days",
                "dates in orange: no more than these are left (common practice)");
        return new QuoteDates(rows.sheet(), day, limit, soon);
    }

    private static String next(Rows rows) {
        return SheetNames.absolute(rows.next(), 1);
    }

    /** The same limits, held against a day that stands in another cell. */
    public QuoteDates seenOn(int row, int column) {
        return new QuoteDates(sheet, SheetNames.absolute(row, column), limit, soon);
    }

    /** Writes the dates of an offer beside each other. */
    public void write(int row, int column, Offer offer) {
        date(sheet, row, column, offer.quotedOn());
        date(sheet, row, column + 1, offer.validUntil());
    }

    /** Writes a date, or that it is not known. */
    public static void date(SheetBuilder sheet, int row, int column, @Nullable LocalDate date) {
        if (date == null) {
            sheet.text(row, column, UNKNOWN, Look.HINT);
        } else {
            sheet.value(row, column, Expr.day(date), NumberFormat.DATE, Look.PLAIN);
        }
    }

    /** Marks both columns from one row to another, both included. */
    public void mark(int fromRow, int toRow, int column) {
        markQuoted(fromRow, toRow, column);
        markValid(fromRow, toRow, column + 1);
    }

    /** Marks days of quotes by their age. */
    public void markQuoted(int fromRow, int toRow, int column) {
        String age = day + "-" + SheetNames.cell(fromRow, column);
        when(fromRow, toRow, column, age + ">" + limit, Look.WARNING);
        when(fromRow, toRow, column, age + "<=" + limit + "," + age + ">=" + limit + "-" + soon, Look.NOTICE);
    }

    /** Marks last days. */
    public void markValid(int fromRow, int toRow, int column) {
        String left = SheetNames.cell(fromRow, column) + "-" + day;
        when(fromRow, toRow, column, left + "<0", Look.WARNING);
        when(fromRow, toRow, column, left + ">=0," + left + "<=" + soon, Look.NOTICE);
    }

    /** A word takes no mark. */
    private void when(int fromRow, int toRow, int column, String holds, Look look) {
        String formula = "IF(ISNUMBER(" + SheetNames.cell(fromRow, column) + "),AND(" + holds + "),FALSE)";
        sheet.highlight(fromRow, column, toRow, column, new ResultSheet.Holds(formula), look);
    }
}
