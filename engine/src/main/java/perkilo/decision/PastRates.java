package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import javax.money.CurrencyUnit;
import perkilo.units.DatedRate;

/**
 * What currencies were worth on earlier days, in one other currency. A day counts if rates of that very day say it: the
 * rate between the two, its inverse, or a cross through one common currency, in this order.
 */
final class PastRates {

    private final CurrencyUnit base;
    private final Map<CurrencyUnit, Map<CurrencyUnit, List<DatedRate>>> rates = new LinkedHashMap<>();
    private final Map<CurrencyUnit, NavigableMap<LocalDate, BigDecimal>> known = new HashMap<>();

    /**
     * Worth in a currency.
     *
     * @param all rates; of two of the same pair and day the first is used
     * @param last later days do not count
     */
    PastRates(List<DatedRate> all, CurrencyUnit base, LocalDate last) {
        this.base = base;
        for (DatedRate rate : all) {
            if (!rate.date().isAfter(last)) {
                rates.computeIfAbsent(rate.from(), from -> new LinkedHashMap<>())
                        .computeIfAbsent(rate.to(), to -> new ArrayList<>())
                        .add(rate);
            }
        }
    }

    /** What one unit of a currency was worth, by day; none if no rate is known. */
    NavigableMap<LocalDate, BigDecimal> of(CurrencyUnit currency) {
        return known.computeIfAbsent(currency, this::found);
    }

    private NavigableMap<LocalDate, BigDecimal> found(CurrencyUnit currency) {
        NavigableMap<LocalDate, BigDecimal> days = between(currency, base);
        for (CurrencyUnit common : rates.keySet()) {
            if (!common.equals(currency) && !common.equals(base)) {
                cross(currency, common, days);
            }
        }
        List<CurrencyUnit> targets = rates.values().stream()
                .flatMap(to -> to.keySet().stream())
                .distinct()
                .filter(common -> !rates.containsKey(common))
                .toList();
        for (CurrencyUnit common : targets) {
            if (!common.equals(currency) && !common.equals(base)) {
                cross(currency, common, days);
            }
        }
        return days;
    }

    private void cross(CurrencyUnit currency, CurrencyUnit common, NavigableMap<LocalDate, BigDecimal> days) {
        NavigableMap<LocalDate, BigDecimal> first = between(currency, common);
        if (!first.isEmpty()) {
            NavigableMap<LocalDate, BigDecimal> second = between(common, base);
            first.forEach((day, worth) -> {
                BigDecimal then = second.get(day);
                if (then != null) {
                    days.computeIfAbsent(day, any -> worth.multiply(then, MathContext.DECIMAL64));
                }
            });
        }
    }

    private NavigableMap<LocalDate, BigDecimal> between(CurrencyUnit from, CurrencyUnit to) {
        NavigableMap<LocalDate, BigDecimal> days = new TreeMap<>();
        for (DatedRate rate : rates.getOrDefault(from, Map.of()).getOrDefault(to, List.of())) {
            days.putIfAbsent(rate.date(), rate.rate().value());
        }
        for (DatedRate rate : rates.getOrDefault(to, Map.of()).getOrDefault(from, List.of())) {
            days.computeIfAbsent(
                    rate.date(), day -> BigDecimal.ONE.divide(rate.rate().value(), MathContext.DECIMAL64));
        }
        return days;
    }
}
