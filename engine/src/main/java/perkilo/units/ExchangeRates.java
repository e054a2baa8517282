package perkilo.units;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;

/**
 * A table of dated exchange rates.
 *
 * <p>A currency that the euro has replaced is always converted through the euro at its {@linkplain EuroFixedRates fixed
 * rate}; rates for it in the table are ignored. For other currencies the freshest way on a date is used: the one whose
 * oldest rate is newest. The ways are the rate between the two currencies, the rate in the opposite direction, and the
 * crosses through one common currency. Among equally fresh ways the rate goes before its inverse, and both before a
 * cross; among equally fresh crosses the one through the currency that comes first in the table is used. Of two rates
 * of the same pair and day the first in the table is used.
 *
 * @param rates in any order
 */
public record ExchangeRates(List<DatedRate> rates) {

    /** A rate that is older than this many days on the costing date gets a warning. */
    public static final int DAYS_UNTIL_OLD = 7;

    /** A table without rates; no currency can be converted to another. */
    public static final ExchangeRates NONE = new ExchangeRates(List.of());

    public ExchangeRates {
        rates = List.copyOf(rates);
    }

    /**
     * The conversion of {@code from} to {@code to} on a day.
     *
     * @return empty if no rate on or before the day leads there
     */
    public Optional<Conversion> on(LocalDate date, CurrencyUnit from, CurrencyUnit to) {
        if (from.equals(to)) {
            return Optional.of(new Conversion(from, to, List.of()));
        }
        Optional<DatedRate> before = EuroFixedRates.on(date, from);
        Optional<DatedRate> after = EuroFixedRates.on(date, to);
        if (before.isEmpty() && after.isEmpty()) {
            return floating(date, from, to);
        }
        CurrencyUnit start = before.isPresent() ? EuroFixedRates.euro() : from;
        CurrencyUnit end = after.isPresent() ? EuroFixedRates.euro() : to;
        Optional<Conversion> between =
                start.equals(end) ? Optional.of(new Conversion(start, end, List.of())) : floating(date, start, end);
        return between.map(way -> {
            List<Conversion.Leg> legs = new ArrayList<>(way.legs());
            before.ifPresent(rate -> legs.add(0, new Conversion.Leg(rate, true)));
            after.ifPresent(rate -> legs.add(new Conversion.Leg(rate, false)));
            return new Conversion(from, to, legs);
        });
    }

    private Optional<Conversion> floating(LocalDate date, CurrencyUnit from, CurrencyUnit to) {
        Map<Pair, DatedRate> newest = newest(date);
        List<Conversion> ways = new ArrayList<>();
        leg(newest, from, to).ifPresent(leg -> ways.add(new Conversion(from, to, List.of(leg))));
        for (CurrencyUnit common : currencies(newest)) {
            Optional<Conversion.Leg> first = leg(newest, from, common);
            Optional<Conversion.Leg> second = leg(newest, common, to);
            if (first.isPresent() && second.isPresent()) {
                ways.add(new Conversion(from, to, List.of(first.get(), second.get())));
            }
        }
        return ways.stream().min(Comparator.comparingLong(way -> way.ageInDays(date)));
    }

    /**
     * The conversion of {@code from} to {@code to} on a day by a rate between the two only, even if a cross is fresher.
     *
     * @return empty if there is no such rate on or before the day
     */
    public Optional<Conversion> betweenOn(LocalDate date, CurrencyUnit from, CurrencyUnit to) {
        return leg(newest(date), from, to).map(leg -> new Conversion(from, to, List.of(leg)));
    }

    /**
     * The newest rate in one direction; rates in the opposite direction are ignored.
     *
     * @return empty if there is no such rate on or before the day
     */
    public Optional<DatedRate> oneWayOn(LocalDate date, CurrencyUnit from, CurrencyUnit to) {
        return Optional.ofNullable(newest(date).get(new Pair(from, to)));
    }

    private Map<Pair, DatedRate> newest(LocalDate date) {
        Map<Pair, DatedRate> newest = new LinkedHashMap<>();
        for (DatedRate rate : rates) {
            if (!rate.date().isAfter(date)) {
                newest.merge(
                        new Pair(rate.from(), rate.to()),
                        rate,
                        (one, other) -> other.date().isAfter(one.date()) ? other : one);
            }
        }
        return newest;
    }

    private static Set<CurrencyUnit> currencies(Map<Pair, DatedRate> newest) {
        Set<CurrencyUnit> all = new LinkedHashSet<>();
        for (Pair pair : newest.keySet()) {
            all.add(pair.from());
            all.add(pair.to());
        }
        return all;
    }

    /** The newest rate between two currencies; if both directions are equally new, the direct one. */
    private static Optional<Conversion.Leg> leg(Map<Pair, DatedRate> newest, CurrencyUnit from, CurrencyUnit to) {
        DatedRate direct = newest.get(new Pair(from, to));
        DatedRate inverse = newest.get(new Pair(to, from));
        if (inverse == null || (direct != null && !inverse.date().isAfter(direct.date()))) {
            return Optional.ofNullable(direct).map(rate -> new Conversion.Leg(rate, false));
        }
        return Optional.of(new Conversion.Leg(inverse, true));
    }

    private record Pair(CurrencyUnit from, CurrencyUnit to) {}
}
