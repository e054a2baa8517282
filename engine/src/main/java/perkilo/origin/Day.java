package perkilo.origin;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;

/**
 * A day that a person typed, with its place.
 *
 * @param date the day
 * @param origin its cell, or {@link Origin#NONE} if it is in no file
 * @param isLive whether a formula can refer to the cell: it holds a date, not words, and is in the workbook itself
 */
public record Day(LocalDate date, Origin origin, boolean isLive) {

    public Day {
        requireNonNull(date, "date");
        requireNonNull(origin, "origin");
    }

    /** A day that is in no file. */
    public static Day of(LocalDate date) {
        return new Day(date, Origin.NONE, false);
    }

    @Override
    public String toString() {
        return date.toString();
    }
}
