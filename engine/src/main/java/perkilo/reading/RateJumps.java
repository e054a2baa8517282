package perkilo.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.reading.table.Findings;
import perkilo.units.DatedRate;
import perkilo.units.EuroFixedRates;

/**
 * Asks about a rate that is far from the one before: a slip of the keys, or the rate in the other direction. Rates of
 * the European Central Bank are taken as they are, and rates of a currency that the euro had replaced by then are not
 * used at all.
 */
public final class RateJumps {

    /** A rate that differs by more than this part from the one before is asked about (common practice, no source). */
    private static final double FAR = 0.2;

    /** The product of a rate and the one before differs from one by no more than this if one is inverted (likewise). */
    private static final double INVERSE = 0.1;

    /** Within so many days a rate does not come near its inverse; one quarter of a year (likewise). */
    private static final int DAYS = 92;

    private static final String RIGHT = "it is right";
    private static final String LEAVE = "leave it out";
    private static final String TURN = "the other way round";
    private static final String WHAT = "rate far from the one before";

    /** So many rates of one pair are asked about at a time. */
    private static final int ASKED_AT_A_TIME = 20;

    private final Findings findings;
    private final RateAnswers answers;

    /** Reports to some findings what has no answer. */
    public RateJumps(Findings findings, RateAnswers answers) {
        this.findings = findings;
        this.answers = answers;
    }

    /** The rates of one table, checked against each other, with what the answers change. */
    List<DatedRate> settled(List<DatedRate> rates) {
        return settled(rates, RateJumps::within);
    }

    /** Incoming rates: the first one of each pair checked against the last rate before it in a table. */
    public List<DatedRate> settled(List<DatedRate> incoming, List<DatedRate> table) {
        Map<Pair, List<DatedRate>> known = byPair(table);
        return settled(incoming, rates -> against(known, rates));
    }

    /**
     * Applies answers until they change nothing any more; then asks what is left, and reports it once for each pair.
     */
    private List<DatedRate> settled(List<DatedRate> rates, Function<List<DatedRate>, List<List<Jump>>> find) {
        List<DatedRate> now = rates;
        Set<String> applied = new HashSet<>();
        while (true) {
            List<List<Jump>> jumps = find.apply(now);
            IdentityHashMap<DatedRate, Optional<DatedRate>> changes = new IdentityHashMap<>();
            jumps.forEach(ofPair -> ofPair.forEach(jump -> change(jump, applied, changes)));
            if (changes.isEmpty()) {
                jumps.forEach(this::ask);
                return now;
            }
            List<DatedRate> next = new ArrayList<>();
            for (DatedRate rate : now) {
                changes.getOrDefault(rate, Optional.of(rate)).ifPresent(next::add);
            }
            now = next;
        }
    }

    /** What an answer changes: a rate is left out, or turned. */
    private void change(Jump jump, Set<String> applied, IdentityHashMap<DatedRate, Optional<DatedRate>> changes) {
        String answer =
                answers.known(WHAT, jump.about(), words -> meaning(jump, words)).orElse(RIGHT);
        if (!answer.equals(RIGHT) && applied.add(jump.about())) {
            answers.ask(jump.question(), words -> meaning(jump, words));
            changes.put(jump.rate(), answer.equals(TURN) ? Optional.of(turned(jump.rate())) : Optional.empty());
        }
    }

    private static Optional<String> meaning(Jump jump, String words) {
        String plain = words.toLowerCase(Locale.ROOT);
        return jump.choices().contains(plain) ? Optional.of(plain) : Optional.empty();
    }

    private static DatedRate turned(DatedRate rate) {
        BigDecimal turned = BigDecimal.ONE.divide(rate.rate().value(), MathContext.DECIMAL128);
        Figure figure = new Figure(turned, rate.rate().origin(), null);
        return new DatedRate(rate.from(), rate.to(), figure, rate.date(), rate.source());
    }

    /** Asks about the rates of one pair; what follows a rate that is asked about is left for later. */
    private void ask(List<Jump> ofPair) {
        List<Jump> open = new ArrayList<>();
        @Nullable DatedRate asked = null;
        int count = 0;
        for (Jump jump : ofPair) {
            if (answers.known(WHAT, jump.about(), words -> meaning(jump, words)).isPresent()) {
                answers.ask(jump.question(), words -> meaning(jump, words));
                continue;
            }
            open.add(jump);
            if (!jump.before().equals(asked) && ++count <= ASKED_AT_A_TIME) {
                answers.ask(jump.question(), words -> meaning(jump, words));
                asked = jump.rate();
            }
        }
        if (!open.isEmpty()) {
            open.get(0).tell(findings, open.size() - 1);
        }
    }

    /** Where rates of one table are far from the ones before, by pair, in the order of their days. */
    private static List<List<Jump>> within(List<DatedRate> rates) {
        List<List<Jump>> all = new ArrayList<>();
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
            tracks.values().forEach(ofOne -> ofOne.values().forEach(track -> track.addTo(all)));
        } else {
            byPair(rates).values().forEach(ofPair -> {
                Track track = new Track();
                ofPair.forEach(track::take);
                track.addTo(all);
            });
        }
        return all;
    }

    private static List<List<Jump>> against(Map<Pair, List<DatedRate>> known, List<DatedRate> incoming) {
        List<List<Jump>> all = new ArrayList<>();
        byPair(incoming).forEach((pair, rates) -> {
            DatedRate first = rates.get(0);
            DatedRate before = lastBefore(known.getOrDefault(pair, List.of()), first.date());
            if (before != null && isFar(before, first)) {
                all.add(List.of(new Jump(before, first)));
            }
        });
        return all;
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
        return (ratio > 1 + FAR || ratio < 1 - FAR) && !isReplaced(rate);
    }

    private static boolean isReplaced(DatedRate rate) {
        return EuroFixedRates.on(rate.date(), rate.from()).isPresent()
                || EuroFixedRates.on(rate.date(), rate.to()).isPresent();
    }

    /** A rate that is far from the one before. */
    private record Jump(DatedRate before, DatedRate rate) {

        /** What tells it apart from others, in whatever file it is. */
        String about() {
            return rate.from().getCurrencyCode() + " " + rate.to().getCurrencyCode() + " " + rate.date() + " "
                    + rate.rate().value().stripTrailingZeros().toPlainString();
        }

        boolean isInverted() {
            boolean near = ChronoUnit.DAYS.between(before.date(), rate.date()) <= DAYS;
            return near && Math.abs(value(rate) * value(before) - 1) <= INVERSE;
        }

        List<String> choices() {
            return isInverted() ? List.of(TURN, RIGHT, LEAVE) : List.of(RIGHT, LEAVE);
        }

        RateAnswers.Question question() {
            String says = rate.rate().value().toPlainString();
            return new RateAnswers.Question(WHAT, about(), rate.rate().origin(), says, text(0), choices());
        }

        void tell(Findings findings, int others) {
            if (isInverted()) {
                findings.error(rate.rate().origin(), text(0));
            } else {
                findings.warning(rate.rate().origin(), text(others));
            }
        }

        private String text(int others) {
            String from = rate.from().getCurrencyCode();
            String to = rate.to().getCurrencyCode();
            String where = before.rate().origin().where();
            BigDecimal now = rate.rate().value();
            BigDecimal then = before.rate().value();
            return isInverted()
                    ? RateTableMessages.inverted(from, to, rate.date(), now, before.date(), where, then)
                    : RateTableMessages.jump(from, to, rate.date(), now, before.date(), where, then, others);
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
        private final List<Jump> jumps = new ArrayList<>();

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
                jumps.add(new Jump(before, rate));
            }
        }

        void addTo(List<List<Jump>> all) {
            if (!jumps.isEmpty()) {
                jumps.sort(Comparator.comparing(jump -> jump.rate().date()));
                all.add(jumps);
            }
        }
    }

    private record Pair(CurrencyUnit from, CurrencyUnit to) {}
}
