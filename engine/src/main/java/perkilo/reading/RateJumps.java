package perkilo.reading;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
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
        Map<CurrencyUnit, Map<CurrencyUnit, Track>> tracks = new LinkedHashMap<>();
        boolean sorted = true;
        for (DatedRate rate : rates) {
            if (!rate.source().equals(WideRates.SOURCE)) {
                sorted &= tracks.computeIfAbsent(rate.from(), from -> new LinkedHashMap<>())
                        .computeIfAbsent(rate.to(), to -> new Track())
                        .take(rate);
            }
        }
        if (sorted) {
            tracks.values().forEach(ofOne -> ofOne.values().forEach(track -> track.tell(this)));
        } else {
            byPair(rates).values().forEach(ofPair -> {
                Track track = new Track();
                ofPair.forEach(track::take);
                track.tell(this);
            });
        }
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
        for (DatedRate rate : rates) {
            if (rate.source().equals(WideRates.SOURCE)) {
                continue;
            }
            pairs.computeIfAbsent(new Pair(rate.from(), rate.to()), pair -> new ArrayList<>())
                    .add(rate);
        }
        pairs.values().forEach(list -> list.sort(Comparator.comparing(DatedRate::date)));
        return pairs;
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

    /** The rates of one pair, one after the other in the order of their days, forwards or backwards. */
    private static final class Track {

        private @Nullable DatedRate last;
        private double lastValue;
        private int direction;
        private int far;
        private @Nullable DatedRate jump;
        private @Nullable DatedRate beforeJump;

        /** Takes the next rate; false if its day is not in the order of the others. */
        boolean take(DatedRate rate) {
            DatedRate neighbour = last;
            double value = value(rate);
            boolean inOrder = true;
            if (neighbour != null) {
                int step = rate.date().compareTo(neighbour.date());
                inOrder = step != 0 && (direction == 0 || direction > 0 == step > 0);
                direction = step;
                double ratio = value / lastValue;
                if (ratio > 1 + FAR || ratio < 1 - FAR || 1 / ratio > 1 + FAR || 1 / ratio < 1 - FAR) {
                    compare(step > 0 ? neighbour : rate, step > 0 ? rate : neighbour);
                }
            }
            last = rate;
            lastValue = value;
            return inOrder;
        }

        private void compare(DatedRate before, DatedRate rate) {
            if (isFar(before, rate)) {
                far++;
                boolean earlier = jump == null || rate.date().isBefore(jump.date());
                jump = earlier ? rate : jump;
                beforeJump = earlier ? before : beforeJump;
            }
        }

        void tell(RateJumps jumps) {
            if (jump != null && beforeJump != null) {
                jumps.tell(beforeJump, jump, far - 1);
            }
        }
    }

    private record Pair(CurrencyUnit from, CurrencyUnit to) {}
}
