package perkilo.reading;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import perkilo.reading.table.Findings;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;

/** Checks that the two directions of a pair of currencies agree; they do not if one was typed in place of the other. */
final class OppositeRates {

    /** More than the margin of a bank, or the change of a rate between the two days (from memory). */
    private static final BigDecimal TOO_FAR_APART = new BigDecimal("0.05");

    private static final int NEAR_IN_DAYS = 31;

    private final ExchangeRates rates;
    private final LocalDate date;
    private final Findings findings;

    OppositeRates(ExchangeRates rates, LocalDate date, Findings findings) {
        this.rates = rates;
        this.date = date;
        this.findings = findings;
    }

    /** Warns where the newest rate in the other direction, if it is near in date, contradicts a rate that is used. */
    void check(DatedRate used) {
        rates.oneWayOn(date, used.to(), used.from()).ifPresent(back -> {
            BigDecimal roundTrip = used.rate().value().multiply(back.rate().value());
            boolean apart = roundTrip.subtract(BigDecimal.ONE).abs().compareTo(TOO_FAR_APART) > 0;
            if (apart && Math.abs(ChronoUnit.DAYS.between(used.date(), back.date())) <= NEAR_IN_DAYS) {
                boolean usedIsNewer = isNewer(used, back);
                warn(usedIsNewer ? used : back, usedIsNewer ? back : used);
            }
        });
    }

    /** By day, and on one day by currency, so that a pair is reported once, whichever direction is used. */
    private static boolean isNewer(DatedRate one, DatedRate other) {
        int byDay = one.date().compareTo(other.date());
        return byDay == 0 ? one.from().getCurrencyCode().compareTo(other.from().getCurrencyCode()) > 0 : byDay > 0;
    }

    private void warn(DatedRate newer, DatedRate older) {
        findings.warning(
                newer.rate().origin(),
                RateTableMessages.contradictsOpposite(
                        newer.from().getCurrencyCode(),
                        newer.to().getCurrencyCode(),
                        newer.date(),
                        newer.rate().value(),
                        older.date(),
                        older.rate().origin().where(),
                        older.rate().value()));
    }
}
