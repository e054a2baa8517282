package perkilo.origin;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;

/**
 * A day that somebody typed, with the place where it stands.
 *
 * @param date the day
 * @param origin its cell, or {@link Origin#NONE} where no file holds it
 * @param isLive whether a formula can refer to the cell: it holds a date, not words, and stands in the workbook itself
 */
public record Day(LocalDate date, Origin origin, boolean isLive) {

    public Day {
        requireNonNull(date, "date");
        requireNonNull(origin, "origin");
    }

    /** A day that no file holds. */
    public static Day of(LocalDate date) {
        return new Day(date, Origin.NONE, false);
    }

    @Override
    public String toString() {
        return date.toString();
    }
}
