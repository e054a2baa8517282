package perkilo.offers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The days on which each quote of a pack counts.
 *
 * <p>A quote counts from its day to its end, without the days of newer ones. So the quotes are taken from the newest to
 * the oldest, and each gets what is still free.
 */
final class PackWindows {

    private static final LocalDate NEVER = LocalDate.MAX;

    private final AgeLimit ageLimit;
    private final List<Unpriced> unpriced;
    /** The days of quotes that do not end before they begin. */
    private final NavigableSet<LocalDate> quoteDays = new TreeSet<>();
    /** By the day of the quote; windows in the order of their days. */
    private final NavigableMap<LocalDate, List<Window>> byDay = new TreeMap<>();
    /** The days on which any quote counts: first to last, without overlaps. */
    private final NavigableMap<LocalDate, LocalDate> covered = new TreeMap<>();

    /**
     * Days in a row on which a quote counts.
     *
     * @param last {@link LocalDate#MAX} if no end is known
     * @param endedBy the list without a price that ends it on {@code last}; null if another reason does
     */
    private record Window(
            Offer quote,
            LocalDate first,
            LocalDate last,
            @Nullable Unpriced endedBy) {

        boolean contains(LocalDate day) {
            return !day.isBefore(first) && !day.isAfter(last);
        }
    }

    PackWindows(List<Offer> quotes, List<Unpriced> unpriced, AgeLimit ageLimit) {
        this.ageLimit = ageLimit;
        this.unpriced = unpriced.isEmpty() ? unpriced : withdrawing(quotes, unpriced);
        List<Offer> newestFirst = new ArrayList<>(quotes);
        newestFirst.sort(PackHistory.newestFirst());
        int from = 0;
        while (from < newestFirst.size()) {
            LocalDate day = newestFirst.get(from).validity().day();
            int to = from;
            while (to < newestFirst.size()
                    && newestFirst.get(to).validity().day().equals(day)) {
                to++;
            }
            List<Offer> ofDay = newestFirst.subList(from, to);
            place(ofDay);
            if (ofDay.stream().anyMatch(quote -> !quote.validity().isEmpty())) {
                quoteDays.add(day);
            }
            from = to;
        }
    }

    /** A list that also has a price for the pack does not withdraw it. */
    private static List<Unpriced> withdrawing(List<Offer> quotes, List<Unpriced> unpriced) {
        List<Unpriced> withdrawing = new ArrayList<>();
        for (Unpriced one : unpriced) {
            if (quotes.stream().noneMatch(quote -> isOfList(quote, one))) {
                withdrawing.add(one);
            }
        }
        return withdrawing;
    }

    private static boolean isOfList(Offer quote, Unpriced row) {
        return row.quotedOn().equals(quote.quotedOn())
                && row.origin().file().equals(quote.origin().file());
    }

    /** Gives the quotes of a day what the newer ones left free. */
    private void place(List<Offer> ofDay) {
        LocalDate first = ofDay.get(0).validity().day();
        LocalDate longest = null;
        List<Window> placed = new ArrayList<>(1);
        for (Offer quote : ofDay) {
            Unpriced list = endedBy(quote);
            LocalDate last = list == null ? end(quote) : list.quotedOn().minusDays(1);
            if (!last.isBefore(first)) {
                free(quote, last, list, placed);
                longest = longest == null || last.isAfter(longest) ? last : longest;
            }
        }
        if (!placed.isEmpty()) {
            byDay.put(first, placed);
        }
        if (longest != null) {
            cover(first, longest);
        }
    }

    /** The last day of a quote, without lists that name the pack without a price. Newer quotes are known by then. */
    private LocalDate end(Offer quote) {
        LocalDate until = quote.validUntil();
        LocalDate follower = quoteDays.higher(quote.validity().day());
        if (until != null || follower == null) {
            return until == null ? NEVER : until;
        }
        LocalDate before = follower.minusDays(1);
        LocalDate quoted = quote.quotedOn();
        LocalDate tooOld = quoted == null ? before : ageLimit.lastDay(quoted);
        return tooOld.isAfter(before) ? tooOld : before;
    }

    private void free(Offer quote, LocalDate last, @Nullable Unpriced endedBy, List<Window> placed) {
        LocalDate from = quote.validity().day();
        for (Map.Entry<LocalDate, LocalDate> taken :
                covered.subMap(from, true, last, true).entrySet()) {
            if (taken.getKey().isAfter(from)) {
                placed.add(new Window(quote, from, taken.getKey().minusDays(1), null));
            }
            if (taken.getValue().equals(NEVER)) {
                return;
            }
            from = taken.getValue().plusDays(1);
        }
        if (!from.isAfter(last)) {
            placed.add(new Window(quote, from, last, endedBy));
        }
    }

    /** Adds days that begin before all that are covered. */
    private void cover(LocalDate first, LocalDate last) {
        LocalDate end = last;
        NavigableMap<LocalDate, LocalDate> within = covered.subMap(first, true, last, true);
        while (!within.isEmpty()) {
            LocalDate until = within.pollFirstEntry().getValue();
            end = until.isAfter(end) ? until : end;
        }
        covered.put(first, end);
    }

    /** The list that ends a quote because it names the pack without a price; null if there is none. */
    @Nullable Unpriced endedBy(Offer quote) {
        Unpriced first = firstWithdrawal(quote);
        return first != null && !first.quotedOn().isAfter(end(quote)) ? first : null;
    }

    /** The first such list that is not older than a quote. */
    private @Nullable Unpriced firstWithdrawal(Offer quote) {
        Unpriced first = null;
        for (Unpriced one : unpriced) {
            if (!one.quotedOn().isBefore(quote.validity().day())
                    && (first == null || one.quotedOn().isBefore(first.quotedOn()))) {
                first = one;
            }
        }
        return first;
    }

    /** The last such list up to a day. */
    @Nullable Unpriced lastWithdrawal(Offer quote, LocalDate day) {
        Unpriced last = null;
        for (Unpriced one : unpriced) {
            if (!one.quotedOn().isBefore(quote.validity().day())
                    && !one.quotedOn().isAfter(day)
                    && (last == null || one.quotedOn().isAfter(last.quotedOn()))) {
                last = one;
            }
        }
        return last;
    }

    /** The days on which a quote counts, from a day on. */
    List<OrderDays> of(Offer quote, LocalDate today) {
        List<OrderDays> days = new ArrayList<>(1);
        for (Window window : windowsOf(quote)) {
            if (!window.last().isBefore(today)) {
                days.add(new OrderDays(
                        window.first().isBefore(today) ? today : window.first(),
                        window.last().equals(NEVER) ? null : window.last(),
                        next(window),
                        window.endedBy(),
                        after(window)));
            }
        }
        return days;
    }

    /** Quotes of a day with the same last day count on the same days. */
    private List<Window> windowsOf(Offer quote) {
        List<Window> ofDay = byDay.getOrDefault(quote.validity().day(), List.of());
        List<Window> own = new ArrayList<>(1);
        for (Window window : ofDay) {
            if (Objects.equals(window.quote().validUntil(), quote.validUntil())
                    && (own.isEmpty() || window.quote().equals(own.get(0).quote()))) {
                own.add(window);
            }
        }
        return own;
    }

    /** The first day after a window on which another quote counts. */
    private @Nullable LocalDate next(Window window) {
        if (window.last().equals(NEVER)) {
            return null;
        }
        LocalDate after = window.last().plusDays(1);
        Map.Entry<LocalDate, LocalDate> around = covered.floorEntry(after);
        return around != null && !around.getValue().isBefore(after) ? after : covered.higherKey(after);
    }

    /** The newer quote that a quote counts again after; null if the window begins on the quote's own day. */
    private OrderDays.@Nullable After after(Window window) {
        LocalDate own = window.quote().validity().day();
        if (window.first().equals(own)) {
            return null;
        }
        LocalDate before = window.first().minusDays(1);
        for (List<Window> newer : byDay.tailMap(own, false).values()) {
            for (Window one : newer) {
                if (one.last().equals(before)) {
                    return new OrderDays.After(one.quote(), before);
                }
            }
        }
        return null;
    }

    /** The quotes that count on a day: usually one. */
    List<Offer> on(LocalDate day) {
        if (covered.floorEntry(day) == null
                || covered.floorEntry(day).getValue().isBefore(day)) {
            return List.of();
        }
        for (List<Window> ofDay : byDay.headMap(day, true).descendingMap().values()) {
            List<Offer> counting = new ArrayList<>(1);
            for (Window window : ofDay) {
                if (window.contains(day)) {
                    counting.add(window.quote());
                }
            }
            if (!counting.isEmpty()) {
                return counting;
            }
        }
        return List.of();
    }

    /** The first of the days in a row on which a quote counts, for a day among them. */
    LocalDate firstOfWindow(Offer quote, LocalDate day) {
        for (Window window : windowsOf(quote)) {
            if (window.contains(day)) {
                return window.first();
            }
        }
        return day;
    }

    /** The quotes that counted on the last day before another day on which any did. */
    List<Offer> lastBefore(LocalDate day) {
        if (day.equals(LocalDate.MIN)) {
            return List.of();
        }
        LocalDate before = day.minusDays(1);
        Map.Entry<LocalDate, LocalDate> around = covered.floorEntry(before);
        return around == null ? List.of() : on(around.getValue().isBefore(before) ? around.getValue() : before);
    }
}
