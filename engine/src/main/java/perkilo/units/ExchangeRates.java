package perkilo.units;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;

/**
 * A table of dated exchange rates.
 *
 * <p>For a date the newest rate on or before it holds. A rate between the two currencies goes before a cross through a
 * common one, whatever their dates; given in both directions, the newer one is used, and the direct one where both are
 * of one day. Of several common currencies the one whose older rate is newest is taken, then the one that comes first
 * in the table.
 *
 * @param rates in any order
 */
public record ExchangeRates(List<DatedRate> rates) {

    /** A rate older than this many days on the costing date is worth a warning. */
    public static final int DAYS_UNTIL_OLD = 7;

    /** No rates: every currency is only worth itself. */
    public static final ExchangeRates NONE = new ExchangeRates(List.of());

    public ExchangeRates {
        rates = List.copyOf(rates);
    }

    /**
     * How {@code from} becomes {@code to} on a day.
     *
     * @return empty if no rate on or before the day leads there
     */
    public Optional<Conversion> on(LocalDate date, CurrencyUnit from, CurrencyUnit to) {
        if (from.equals(to)) {
            return Optional.of(new Conversion(from, to, List.of()));
        }
        Optional<Conversion.Leg> single = leg(date, from, to);
        if (single.isPresent()) {
            return Optional.of(new Conversion(from, to, List.of(single.get())));
        }
        return through(date, from, to);
    }

    private Optional<Conversion> through(LocalDate date, CurrencyUnit from, CurrencyUnit to) {
        List<Conversion> crosses = new ArrayList<>();
        for (CurrencyUnit common : currencies()) {
            Optional<Conversion.Leg> first = leg(date, from, common);
            Optional<Conversion.Leg> second = leg(date, common, to);
            if (first.isPresent() && second.isPresent()) {
                crosses.add(new Conversion(from, to, List.of(first.get(), second.get())));
            }
        }
        return crosses.stream().min(Comparator.comparingLong(cross -> cross.ageInDays(date)));
    }

    private Set<CurrencyUnit> currencies() {
        Set<CurrencyUnit> all = new LinkedHashSet<>();
        for (DatedRate rate : rates) {
            all.add(rate.from());
            all.add(rate.to());
        }
        return all;
    }

    /** The newest rate between two currencies, in its own direction where both are equally new. */
    private Optional<Conversion.Leg> leg(LocalDate date, CurrencyUnit from, CurrencyUnit to) {
        Optional<Conversion.Leg> direct = newest(date, from, to).map(rate -> new Conversion.Leg(rate, false));
        Optional<Conversion.Leg> inverse = newest(date, to, from).map(rate -> new Conversion.Leg(rate, true));
        if (direct.isEmpty() || inverse.isEmpty()) {
            return direct.or(() -> inverse);
        }
        boolean inverseIsNewer =
                inverse.get().rate().date().isAfter(direct.get().rate().date());
        return inverseIsNewer ? inverse : direct;
    }

    private Optional<DatedRate> newest(LocalDate date, CurrencyUnit from, CurrencyUnit to) {
        return rates.stream()
                .filter(rate -> rate.from().equals(from) && rate.to().equals(to))
                .filter(rate -> !rate.date().isAfter(date))
                .max(Comparator.comparing(DatedRate::date));
    }
}
