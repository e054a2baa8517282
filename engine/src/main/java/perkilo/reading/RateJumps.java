package perkilo.reading;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.reading.table.Findings;
import perkilo.units.DatedRate;

/**
 * Asks about a rate that is far from the one before: a slip of the keys, or the rate in the other direction. Rates of
 * the European Central Bank are taken as they are.
 */
public final class RateJumps {

    /** A rate that differs by more than this part from the one before is asked about (common practice, no source). */
    private static final double FAR = 0.2;

    /** The product of a rate and the one before differs from one by no more than this if one is inverted (likewise). */
    private static final double INVERSE = 0.1;

    /** Within so many days a rate does not come near its inverse; one quarter of a year (likewise). */
    private static final int DAYS = 92;

    private final Findings findings;

    /** Reports to some findings. */
    public RateJumps(Findings findings) {
        this.findings = findings;
    }

    /** Checks the rates of one table against each other. */
    void check(List<DatedRate> rates) {
        byPair(rates).values().forEach(this::pair);
    }

    /** Checks the first incoming rate of each pair against the last rate before it in a table. */
    public void check(List<DatedRate> incoming, List<DatedRate> table) {
        Map<Pair, List<DatedRate>> known = byPair(table);
        byPair(incoming).forEach((pair, rates) -> {
            DatedRate first = rates.get(0);
            DatedRate before = lastBefore(known.getOrDefault(pair, List.of()), first.date());
            if (before != null && isFar(before, first)) {
                tell(before, first, 0);
            }
        });
    }

    private static @Nullable DatedRate lastBefore(List<DatedRate> rates, LocalDate day) {
        DatedRate last = null;
        for (DatedRate rate : rates) {
            last = rate.date().isBefore(day) ? rate : last;
        }
        return last;
    }

    private static Map<Pair, List<DatedRate>> byPair(List<DatedRate> rates) {
        Map<Pair, List<DatedRate>> pairs = new LinkedHashMap<>();
        Map<Object, Boolean> typed = new HashMap<>();
        for (DatedRate rate : rates) {
            if (!typed.computeIfAbsent(rate.source(), source -> !source.equals(WideRates.SOURCE))) {
                continue;
            }
            pairs.computeIfAbsent(new Pair(rate.from(), rate.to()), pair -> new ArrayList<>())
                    .add(rate);
        }
        pairs.values().forEach(list -> list.sort(Comparator.comparing(DatedRate::date)));
        return pairs;
    }

    private void pair(List<DatedRate> rates) {
        int others = 0;
        DatedRate before = null;
        DatedRate first = null;
        DatedRate firstBefore = null;
        for (DatedRate rate : rates) {
            if (before != null && isFar(before, rate)) {
                others += first == null ? 0 : 1;
                firstBefore = first == null ? before : firstBefore;
                first = first == null ? rate : first;
            }
            before = rate;
        }
        if (first != null && firstBefore != null) {
            tell(firstBefore, first, others);
        }
    }

    private static boolean isFar(DatedRate before, DatedRate rate) {
        double ratio = value(rate) / value(before);
        return ratio > 1 + FAR || ratio < 1 - FAR;
    }

    private void tell(DatedRate before, DatedRate rate, int others) {
        double product = value(rate) * value(before);
        boolean near = ChronoUnit.DAYS.between(before.date(), rate.date()) <= DAYS;
        String from = rate.from().getCurrencyCode();
        String to = rate.to().getCurrencyCode();
        String where = before.rate().origin().where();
        BigDecimal now = rate.rate().value();
        BigDecimal then = before.rate().value();
        if (near && Math.abs(product - 1) <= INVERSE) {
            findings.error(
                    rate.rate().origin(),
                    RateTableMessages.inverted(from, to, rate.date(), now, before.date(), where, then));
        } else {
            findings.warning(
                    rate.rate().origin(),
                    RateTableMessages.jump(from, to, rate.date(), now, before.date(), where, then, others));
        }
    }

    private static double value(DatedRate rate) {
        return rate.rate().value().doubleValue();
    }

    private record Pair(CurrencyUnit from, CurrencyUnit to) {}
}
