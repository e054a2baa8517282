package perkilo.origin;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;

/**
 * A day that somebody typed, with the place where it stands.
 *
 * @param date the day
 * @param origin its cell, or {@link Origin#NONE} where no file holds it
 */
public record Day(LocalDate date, Origin origin) {

    public Day {
        requireNonNull(date, "date");
        requireNonNull(origin, "origin");
    }

    /** A day that no file holds. */
    public static Day of(LocalDate date) {
        return new Day(date, Origin.NONE);
    }

    @Override
    public String toString() {
        return date.toString();
    }
}
