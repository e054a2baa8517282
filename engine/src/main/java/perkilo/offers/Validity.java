package perkilo.offers;

import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The days that a price is quoted for, whatever other quotes say.
 *
 * @param quotedOn the day of the quote, or the day that it is announced for; null where not known
 * @param validUntil the last day; null where not known
 */
public record Validity(
        @Nullable LocalDate quotedOn, @Nullable LocalDate validUntil) {

    /** Neither day is known. */
    public static final Validity UNKNOWN = new Validity(null, null);

    /** This one where it has these days, or another that has: long lists have few. */
    public Validity orOf(@Nullable LocalDate quoted, @Nullable LocalDate until) {
        return Objects.equals(quotedOn, quoted) && Objects.equals(validUntil, until)
                ? this
                : new Validity(quoted, until);
    }

    /** The day of the quote, by which quotes follow each other: one without a day is older than all others. */
    public LocalDate day() {
        return quotedOn == null ? LocalDate.MIN : quotedOn;
    }

    /** Whether it begins later than a day. */
    public boolean beginsAfter(LocalDate day) {
        return quotedOn != null && quotedOn.isAfter(day);
    }

    /** Whether its last day lies before a day. */
    public boolean endsBefore(LocalDate day) {
        return validUntil != null && validUntil.isBefore(day);
    }

    /** Whether its last day lies before its first, so that it never holds. */
    public boolean isEmpty() {
        return endsBefore(day());
    }
}
