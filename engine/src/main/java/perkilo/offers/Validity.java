package perkilo.offers;

import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The days for which a price is quoted, regardless of other quotes.
 *
 * @param quotedOn the day of the quote, or the day that it is announced for; null if unknown
 * @param validUntil the last day; null if unknown
 */
public record Validity(
        @Nullable LocalDate quotedOn, @Nullable LocalDate validUntil) {

    /** Neither day is known. */
    public static final Validity UNKNOWN = new Validity(null, null);

    /** This validity if it has these days, else a new one: long lists have few different ones. */
    public Validity orOf(@Nullable LocalDate quoted, @Nullable LocalDate until) {
        return Objects.equals(quotedOn, quoted) && Objects.equals(validUntil, until)
                ? this
                : new Validity(quoted, until);
    }

    /** The day of the quote, for sorting: a quote without a day is older than all others. */
    public LocalDate day() {
        return quotedOn == null ? LocalDate.MIN : quotedOn;
    }

    /** Whether it begins after a day. */
    public boolean beginsAfter(LocalDate day) {
        return quotedOn != null && quotedOn.isAfter(day);
    }

    /** Whether its last day is before a day. */
    public boolean endsBefore(LocalDate day) {
        return validUntil != null && validUntil.isBefore(day);
    }

    /** Whether it ends before it begins, so that it is never valid. */
    public boolean isEmpty() {
        return endsBefore(day());
    }
}
