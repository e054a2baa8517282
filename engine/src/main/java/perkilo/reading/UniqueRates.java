package perkilo.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.reading.table.Findings;
import perkilo.units.DatedRate;

/** Rates, each pair of currencies and day once; a second one that differs is an error. */
final class UniqueRates {

    private final Map<List<Object>, DatedRate> rates = new LinkedHashMap<>();
    private final Findings findings;

    UniqueRates(Findings findings) {
        this.findings = findings;
    }

    /** Adds a rate, unless there is one. */
    void add(DatedRate rate) {
        DatedRate first = rates.putIfAbsent(List.of(rate.from(), rate.to(), rate.date()), rate);
        if (first != null && first.rate().value().compareTo(rate.rate().value()) != 0) {
            findings.error(
                    rate.rate().origin(),
                    RateTableMessages.secondRate(
                            rate.from().getCurrencyCode(),
                            rate.to().getCurrencyCode(),
                            rate.date(),
                            first.rate().origin().where()));
        }
    }

    /** All rates, in the order in which they were added. */
    List<DatedRate> list() {
        return new ArrayList<>(rates.values());
    }
}
