package perkilo.offers;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/** Which quote counts, against the sentences of the method page, section 6, asked of each day and quote by itself. */
final class DayByDayProperties {

    private static final LocalDate START = LocalDate.of(2026, 11, 1);
    private static final int DAYS = 60;

    /** A quote, or a row without a price; a day or an end may be unknown. */
    record Row(@Nullable Integer day, @Nullable Integer end, boolean priced) {}

    @Provide
    Arbitrary<List<Row>> rows() {
        Arbitrary<Integer> days = Arbitraries.integers().between(0, 40);
        return Combinators.combine(
                        days.injectNull(0.1),
                        days.injectNull(0.4),
                        Arbitraries.frequencyOf(
                                net.jqwik.api.Tuple.of(7, Arbitraries.just(true)),
                                net.jqwik.api.Tuple.of(1, Arbitraries.just(false))))
                .as(Row::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(7);
    }

    @Property
    void each_day_has_the_quotes_of_the_definition(
            @ForAll("rows") List<Row> rows,
            @ForAll @IntRange(max = 40) int today,
            @ForAll @IntRange(max = 25) int limit) {
        List<Offer> quotes = new ArrayList<>();
        List<Unpriced> unpriced = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            add(rows.get(row), row, quotes, unpriced);
        }
        OfferHistory history = new OfferHistory(quotes, unpriced, START.plusDays(today), new AgeLimit(limit));

        for (int day = today; day < DAYS; day++) {
            LocalDate on = START.plusDays(day);
            assertThat(history.orderableOn(on)).as(on.toString()).isEqualTo(counting(quotes, unpriced, on, limit));
        }
        for (Offer quote : quotes) {
            QuoteLife life = history.lifeOf(quote);
            boolean counts =
                    counting(quotes, unpriced, START.plusDays(today), limit).contains(quote);
            assertThat(life instanceof QuoteLife.Holds).as(life.toString()).isEqualTo(counts);
            neighbours(quote, history.orderDays(quote), quotes, unpriced, limit);
        }
    }

    /** What is said about the days before and after a stretch of days. */
    private static void neighbours(
            Offer quote, List<OrderDays> days, List<Offer> quotes, List<Unpriced> unpriced, int limit) {
        for (OrderDays some : days) {
            LocalDate last = some.last();
            if (last != null) {
                LocalDate next = null;
                for (LocalDate day = last.plusDays(1); next == null && day.isBefore(START.plusDays(DAYS)); ) {
                    next = counting(quotes, unpriced, day, limit).isEmpty() ? null : day;
                    day = day.plusDays(1);
                }
                assertThat(some.next()).isEqualTo(next);
            }
            OrderDays.After after = some.after();
            if (after != null) {
                assertThat(counting(quotes, unpriced, after.ended(), limit)).contains(after.newer());
                assertThat(counting(quotes, unpriced, after.ended().plusDays(1), limit))
                        .contains(quote);
                assertThat(after.newer().validity().day())
                        .isAfter(quote.validity().day());
            }
        }
    }

    private static void add(Row row, int number, List<Offer> quotes, List<Unpriced> unpriced) {
        LocalDate quoted = row.day() == null ? null : START.plusDays(row.day());
        LocalDate until = row.end() == null ? null : START.plusDays(row.end());
        Origin origin = new Origin("list" + number + ".csv", "", "line 2");
        Offer offer = new Offer(
                "Fen",
                "Wax",
                Figure.of("25"),
                Measure.KG,
                List.of(new Offer.PriceBreak(null, Figure.of("1"), null, Origin.NONE)),
                Currencies.of("EUR"),
                LineTerms.NONE,
                new Validity(quoted, until),
                origin);
        if (row.priced()) {
            quotes.add(offer);
        } else if (quoted != null) {
            unpriced.add(new Unpriced(PackOffered.of(offer), quoted, origin));
        }
    }

    /** The quotes that count on a day: of those that are valid on it, the ones with the newest day. */
    private static List<Offer> counting(List<Offer> quotes, List<Unpriced> unpriced, LocalDate day, int limit) {
        List<Offer> valid = quotes.stream()
                .filter(quote -> isValid(quote, quotes, unpriced, day, limit))
                .toList();
        Optional<LocalDate> newest =
                valid.stream().map(quote -> quote.validity().day()).max(Comparator.naturalOrder());
        return valid.stream()
                .filter(quote -> quote.validity().day().equals(newest.orElseThrow()))
                .toList();
    }

    private static boolean isValid(Offer quote, List<Offer> quotes, List<Unpriced> unpriced, LocalDate day, int limit) {
        LocalDate quoted = quote.quotedOn();
        if (quoted != null && quoted.isAfter(day)) {
            return false;
        }
        boolean withdrawn = unpriced.stream()
                .anyMatch(list -> !list.quotedOn().isAfter(day)
                        && (quoted == null || !list.quotedOn().isBefore(quoted)));
        if (withdrawn) {
            return false;
        }
        if (quote.validUntil() != null) {
            return !requireNonNull(quote.validUntil()).isBefore(day);
        }
        boolean followed = quotes.stream()
                .filter(other -> other.quotedOn() == null
                        || other.validUntil() == null
                        || !requireNonNull(other.validUntil()).isBefore(requireNonNull(other.quotedOn())))
                .map(Offer::quotedOn)
                .filter(Objects::nonNull)
                .anyMatch(other -> !other.isAfter(day) && (quoted == null || other.isAfter(quoted)));
        return !followed || (quoted != null && !quoted.plusDays(limit).isBefore(day));
    }
}
