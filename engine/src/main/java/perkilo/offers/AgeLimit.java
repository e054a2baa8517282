package perkilo.offers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;

/**
 * How long a quote without a last day counts after a newer one has followed.
 *
 * @param days whole days, zero or more
 */
public record AgeLimit(long days) {

    /** Longer than any price holds; keeps dates within what a calendar can show. */
    private static final long MOST_DAYS = 1_000_000;

    public AgeLimit {
        days = Math.max(0, Math.min(days, MOST_DAYS));
    }

    /** The limit as typed; part of a day does not count. */
    public static AgeLimit ofDays(BigDecimal days) {
        return new AgeLimit(days.min(BigDecimal.valueOf(MOST_DAYS))
                .setScale(0, RoundingMode.FLOOR)
                .longValueExact());
    }

    /** The last day on which a quote is not too old. */
    LocalDate lastDay(LocalDate quotedOn) {
        return quotedOn.isAfter(LocalDate.MAX.minusDays(days)) ? LocalDate.MAX : quotedOn.plusDays(days);
    }
}
