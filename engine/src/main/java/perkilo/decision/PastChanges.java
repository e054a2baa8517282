package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Changes of a value within windows of so many days, as factors: 1.1 for 10 % more. */
final class PastChanges {

    /** A rate that is older than this at the end of a window is not known there. */
    private static final int OLDEST_RATE_DAYS = 7;

    private PastChanges() {}

    /**
     * A window for each day with a rate, to the last rate at its end; windows whose last rate is old there are left
     * out.
     *
     * @param days the value by day
     * @param horizon days from the beginning of a window to its end
     */
    static NavigableMap<LocalDate, BigDecimal> ofRates(NavigableMap<LocalDate, BigDecimal> days, int horizon) {
        NavigableMap<LocalDate, BigDecimal> changes = new TreeMap<>();
        if (days.isEmpty()) {
            return changes;
        }
        LocalDate last = days.lastKey();
        days.forEach((day, value) -> {
            LocalDate end = day.plusDays(horizon);
            if (!end.isAfter(last)) {
                Map.Entry<LocalDate, BigDecimal> then = days.floorEntry(end);
                if (then.getKey().isAfter(day)
                        && !then.getKey().plusDays(OLDEST_RATE_DAYS).isBefore(end)) {
                    changes.put(day, then.getValue().divide(value, MathContext.DECIMAL64));
                }
            }
        });
        return changes;
    }

    /**
     * Changes of a list price over every window that begins on or after the first list and ends by a day, the newest
     * first. A price holds from its list to the next one.
     *
     * @param prices by the day of the list
     */
    static List<BigDecimal> ofPrice(NavigableMap<LocalDate, BigDecimal> prices, int horizon, LocalDate last) {
        List<BigDecimal> changes = new ArrayList<>();
        LocalDate first = prices.firstKey();
        for (LocalDate start = last.minusDays(horizon); !start.isBefore(first); start = start.minusDays(1)) {
            changes.add(change(prices, start, horizon));
        }
        return changes;
    }

    /**
     * Changes of a list price over windows that begin on given days. Those before the first list have the changes of
     * the item's own windows, from the newest back, again and again.
     *
     * @param starts the first days of the windows, falling
     * @param own all changes of the price, the newest first; at least one
     */
    static List<BigDecimal> ofPrice(
            NavigableMap<LocalDate, BigDecimal> prices, int horizon, List<LocalDate> starts, List<BigDecimal> own) {
        List<BigDecimal> changes = new ArrayList<>();
        int before = 0;
        for (LocalDate start : starts) {
            changes.add(
                    start.isBefore(prices.firstKey())
                            ? own.get(before++ % own.size())
                            : change(prices, start, horizon));
        }
        return changes;
    }

    private static BigDecimal change(NavigableMap<LocalDate, BigDecimal> prices, LocalDate start, int horizon) {
        BigDecimal then = prices.floorEntry(start).getValue();
        BigDecimal later = prices.floorEntry(start.plusDays(horizon)).getValue();
        return later.divide(then, MathContext.DECIMAL64);
    }
}
