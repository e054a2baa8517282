package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.reading.RatesReader;
import perkilo.units.Conversion;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;

/** Says what an exchange rate was on a day. */
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

    /** That the rate is an old one, if it is. */
    private static Optional<Finding> old(Conversion conversion, LocalDate asked) {
        long days = conversion.ageInDays(asked);
        return days > ExchangeRates.DAYS_UNTIL_OLD
                ? Optional.of(Finding.warning(
                        conversion.legs().get(0).rate().rate().origin(),
                        "the rate from %s to %s is %d days older than %s"
                                .formatted(conversion.from(), conversion.to(), days, asked)))
                : Optional.empty();
    }

    /** That no rate leads there, and what the table holds. */
    private static Finding none(RateRequest request, ExchangeRates rates) {
        Path table = request.table();
        Optional<LocalDate> first = rates.rates().stream().map(DatedRate::date).min(LocalDate::compareTo);
        String begins = first.map(day -> "; the table begins on " + day).orElse("");
        return Finding.error(
                new Origin(String.valueOf(table.getFileName()), "", ""),
                "no rate leads from %s to %s on or before %s%s"
                        .formatted(request.from(), request.to(), request.day(), begins));
    }
}
