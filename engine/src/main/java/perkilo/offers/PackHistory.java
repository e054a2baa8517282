package perkilo.offers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One supplier's quotes for one item in one pack, as seen on a day: at which of them one can order, and when.
 *
 * <ul>
 *   <li>On a day, the newest of the quotes counts that have begun and have not ended. So an older one counts again when
 *       a newer one ends before it. A quote without a day is older than all others. Two of the same day, such as for 10
 *       kg and 10,000 g, both count.
 *   <li>A quote ends on its last day. If that is unknown, it does not end, unless a newer one follows: then it ends
 *       when its age reaches the limit, but not before the newer one begins.
 *   <li>A supplier's list that names the pack without a price ends all quotes that are not newer.
 *   <li>A quote of a later day is announced: it counts from its day on.
 *   <li>A quote that ends before it begins never counts, hides none and follows none.
 * </ul>
 */
public final class PackHistory {

    private final List<Offer> quotes;
    private final LocalDate today;
    private final PackWindows windows;
    private final @Nullable Offer newest;
    private final @Nullable Unpriced withdrawnBy;
    /** The quotes that count today. */
    private final List<Offer> current;

    /**
     * The history of a pack.
     *
     * @param quotes of one pack, in any order; superseded ones included
     * @param unpriced rows of lists that name it without a price
     * @param today the day as seen from
     * @param ageLimit the days after which a quote without a last day ends that a newer one has followed
     */
    public PackHistory(List<Offer> quotes, List<Unpriced> unpriced, LocalDate today, AgeLimit ageLimit) {
        this.quotes = quotes;
        this.today = today;
        this.windows = new PackWindows(quotes, unpriced, ageLimit);
        this.newest = newest(quotes, today);
        this.withdrawnBy = newest == null ? null : windows.lastWithdrawal(newest, today);
        this.current = windows.on(today);
    }

    private static @Nullable Offer newest(List<Offer> quotes, LocalDate today) {
        Offer newest = null;
        for (Offer quote : quotes) {
            if (!quote.isAnnouncedOn(today) && (newest == null || day(quote).isAfter(day(newest)))) {
                newest = quote;
            }
        }
        return newest;
    }

    /** The histories of quotes by their packs, in the order in which packs appear first. */
    public static Map<PackOffered, PackHistory> byPack(Collection<Offer> quotes, LocalDate today, AgeLimit ageLimit) {
        Map<PackOffered, List<Offer>> packs = new LinkedHashMap<>();
        for (Offer quote : quotes) {
            packs.computeIfAbsent(PackOffered.of(quote), pack -> new ArrayList<>(1))
                    .add(quote);
        }
        Map<PackOffered, PackHistory> histories = new LinkedHashMap<>();
        packs.forEach((pack, ofPack) -> histories.put(pack, new PackHistory(ofPack, List.of(), today, ageLimit)));
        return histories;
    }

    private static LocalDate day(Offer quote) {
        return quote.validity().day();
    }

    /** The state of one of the quotes. */
    public QuoteLife lifeOf(Offer quote) {
        List<OrderDays> days = orderDays(quote);
        if (quote.isAnnouncedOn(today)) {
            Unpriced ended = windows.endedBy(quote);
            return !days.isEmpty()
                    ? new QuoteLife.Announced(days, current.isEmpty() ? newest : current.get(0))
                    : ended != null && !quote.validity().isEmpty()
                            ? new QuoteLife.Withdrawn(ended, quote)
                            : new QuoteLife.Never();
        }
        if (!days.isEmpty() && days.get(0).contains(today)) {
            return new QuoteLife.Holds(days);
        }
        Offer last = Objects.requireNonNull(newest);
        if (withdrawnBy != null) {
            return new QuoteLife.Withdrawn(withdrawnBy, last);
        }
        if (day(last).isAfter(day(quote))) {
            boolean hidden = !current.isEmpty() && day(current.get(0)).isAfter(day(quote));
            return new QuoteLife.Superseded(hidden ? current.get(0) : last, hidden, days);
        }
        return quote.validity().isEmpty() && quote.quotedOn() != null
                ? new QuoteLife.Never()
                : new QuoteLife.Expired(current.isEmpty() ? null : current.get(0));
    }

    /** The days on which orders can be placed at one of the quotes, from today on; none if it does not count again. */
    public List<OrderDays> orderDays(Offer quote) {
        return windows.of(quote, today);
    }

    /** The list that ends a quote because it names the pack without a price; null if there is none. */
    @Nullable Unpriced endedBy(Offer quote) {
        return windows.endedBy(quote);
    }

    /**
     * The quotes that count today; if there are none, the newest up to today, expired and withdrawn ones included.
     * Usually one; none if all are announced.
     */
    public List<Offer> now() {
        if (!current.isEmpty() || newest == null) {
            return current;
        }
        LocalDate day = day(newest);
        return quotes.stream().filter(quote -> day(quote).equals(day)).toList();
    }

    /** The quotes that counted last before those of {@link #now} did; none if there are none. */
    public List<Offer> before() {
        if (newest == null) {
            return List.of();
        }
        return windows.lastBefore(current.isEmpty() ? day(newest) : windows.firstOfWindow(current.get(0), today));
    }

    static Comparator<Offer> newestFirst() {
        return Comparator.comparing(PackHistory::day).reversed();
    }
}
