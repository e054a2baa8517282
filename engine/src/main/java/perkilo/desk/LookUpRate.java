package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.reading.RatesReader;
import perkilo.units.Conversion;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;

/** Service that looks up the exchange rate of a day. */
public final class LookUpRate {

    /**
     * Looks a rate up.
     *
     * @throws IOException if the table cannot be read
     */
    public RateAnswer look(RateRequest request) throws IOException {
        Reading<List<DatedRate>> read = new RatesReader().read(request.table());
        List<Finding> findings = new ArrayList<>(read.findings());
        ExchangeRates rates = new ExchangeRates(read.value());
        Optional<Conversion> found =
                read.hasErrors() ? Optional.empty() : rates.on(request.day(), request.from(), request.to());
        if (found.isEmpty()) {
            findings.add(none(request, rates));
            return new RateAnswer.None(findings);
        }
        old(found.get(), request.day()).ifPresent(findings::add);
        return new RateAnswer.Found(found.get(), findings);
    }

    /** A warning if the rate is old. */
    private static Optional<Finding> old(Conversion conversion, LocalDate asked) {
        long days = conversion.ageInDays(asked);
        return days > ExchangeRates.DAYS_UNTIL_OLD
                ? Optional.of(Finding.warning(
                        conversion.legs().get(0).rate().rate().origin(),
                        DeskMessages.oldRate(
                                conversion.from().getCurrencyCode(),
                                conversion.to().getCurrencyCode(),
                                days,
                                asked)))
                : Optional.empty();
    }

    /** An error that there is no rate, with the first day of the table. */
    private static Finding none(RateRequest request, ExchangeRates rates) {
        Path table = request.table();
        Optional<LocalDate> first = rates.rates().stream().map(DatedRate::date).min(LocalDate::compareTo);
        return Finding.error(
                BookReading.whole(table),
                DeskMessages.noRate(
                        request.from().getCurrencyCode(),
                        request.to().getCurrencyCode(),
                        request.day(),
                        first.orElse(null)));
    }
}
