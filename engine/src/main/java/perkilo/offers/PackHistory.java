package perkilo.offers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * One supplier's quotes for one item in one pack, as seen on a day: at which of them one can order, and when.
 *
 * <ul>
 *   <li>Of the quotes up to the day the newest counts, and replaces the older ones even if it has expired. A quote
 *       without a day is older than all others. Two of the same day, such as for 10 kg and 10,000 g, both count.
 *   <li>A supplier's list that names the pack without a price withdraws all quotes that are not newer.
 *   <li>A quote of a later day is announced: it applies to orders placed from its day on, and the one before it until
 *       the day before. If that one ends earlier still, there is no price in between.
 *   <li>An announced quote that ends before it begins is never used and replaces none.
 * </ul>
 */
public final class PackHistory {

    private final List<Offer> quotes;
    private final LocalDate today;
    private final @Nullable Offer newest;
    private final @Nullable Unpriced withdrawnBy;
    /** The days on which announced prices begin. */
    private final NavigableSet<LocalDate> announced;
    /** Announced lists that name the pack without a price. */
    private final NavigableMap<LocalDate, Unpriced> withdrawals;

    /**
     * The history of a pack.
     *
     * @param quotes of one pack, in any order; superseded ones included
     * @param unpriced rows of lists that name it without a price
     * @param today the day as seen from
     */
    public PackHistory(List<Offer> quotes, List<Unpriced> unpriced, LocalDate today) {
        this.quotes = quotes;
        this.today = today;
        this.newest = newest(quotes, today);
        this.announced = announced(quotes, today);
        this.withdrawals = withdrawals(unpriced, today);
        Unpriced last = lastBefore(unpriced, today);
        this.withdrawnBy = newest != null && last != null && withdraws(last, newest) ? last : null;
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

    /** Most packs have no announced prices: saves a tree for each pack of a long list. */
    private static NavigableSet<LocalDate> announced(List<Offer> quotes, LocalDate today) {
        NavigableSet<LocalDate> days = null;
        for (Offer quote : quotes) {
            if (quote.isAnnouncedOn(today) && !quote.validity().isEmpty()) {
                days = days == null ? new TreeSet<>() : days;
                days.add(day(quote));
            }
        }
        return days == null ? Collections.emptyNavigableSet() : days;
    }

    private static NavigableMap<LocalDate, Unpriced> withdrawals(List<Unpriced> unpriced, LocalDate today) {
        if (unpriced.isEmpty()) {
            return Collections.emptyNavigableMap();
        }
        NavigableMap<LocalDate, Unpriced> later = new TreeMap<>();
        for (Unpriced one : unpriced) {
            if (one.quotedOn().isAfter(today)) {
                later.putIfAbsent(one.quotedOn(), one);
            }
        }
        return later;
    }

    private static @Nullable Unpriced lastBefore(List<Unpriced> unpriced, LocalDate today) {
        Unpriced last = null;
        for (Unpriced one : unpriced) {
            if (!one.quotedOn().isAfter(today)
                    && (last == null || one.quotedOn().isAfter(last.quotedOn()))) {
                last = one;
            }
        }
        return last;
    }

    /** The histories of quotes by their packs, in the order in which packs appear first. */
    public static Map<PackOffered, PackHistory> byPack(Collection<Offer> quotes, LocalDate today) {
        Map<PackOffered, List<Offer>> packs = new LinkedHashMap<>();
        for (Offer quote : quotes) {
            packs.computeIfAbsent(PackOffered.of(quote), pack -> new ArrayList<>(1))
                    .add(quote);
        }
        Map<PackOffered, PackHistory> histories = new LinkedHashMap<>();
        packs.forEach((pack, ofPack) -> histories.put(pack, new PackHistory(ofPack, List.of(), today)));
        return histories;
    }

    /** A list that also has a price for the pack does not withdraw it. */
    private static boolean withdraws(Unpriced unpriced, Offer quote) {
        return !unpriced.quotedOn().isBefore(day(quote))
                && !unpriced.origin().file().equals(quote.origin().file());
    }

    private static LocalDate day(Offer quote) {
        return quote.validity().day();
    }

    /** The state of one of the quotes. */
    public QuoteLife lifeOf(Offer quote) {
        if (quote.isAnnouncedOn(today)) {
            return quote.validity().isEmpty() ? new QuoteLife.Never() : new QuoteLife.Announced(days(quote), newest);
        }
        if (withdrawnBy != null && newest != null) {
            return new QuoteLife.Withdrawn(withdrawnBy, newest);
        }
        if (newest != null && day(newest).isAfter(day(quote))) {
            return new QuoteLife.Superseded(newest);
        }
        return quote.isExpiredOn(today) ? new QuoteLife.Expired() : new QuoteLife.Holds(days(quote));
    }

    /** The days on which orders can be placed at one of the quotes; null if there are none. */
    public @Nullable OrderDays orderDays(Offer quote) {
        QuoteLife life = lifeOf(quote);
        if (life instanceof QuoteLife.Holds holds) {
            return holds.days();
        }
        return life instanceof QuoteLife.Announced later ? later.days() : null;
    }

    /**
     * The quotes of the newest day up to today, expired and withdrawn ones included; usually one; none if all are
     * announced.
     */
    public List<Offer> newest() {
        return newest == null ? List.of() : ofDay(day(newest));
    }

    /** The quotes that the newest ones replaced: those of the day before the newest; none if there are none. */
    public List<Offer> superseded() {
        LocalDate before = null;
        for (Offer quote : quotes) {
            LocalDate day = day(quote);
            boolean isOlder = newest != null && day.isBefore(day(newest));
            before = isOlder && (before == null || day.isAfter(before)) ? day : before;
        }
        return before == null ? List.of() : ofDay(before);
    }

    private List<Offer> ofDay(LocalDate day) {
        return quotes.stream().filter(quote -> day(quote).equals(day)).toList();
    }

    private OrderDays days(Offer quote) {
        LocalDate first = quote.isAnnouncedOn(today) ? day(quote) : today;
        LocalDate last = quote.validUntil();
        LocalDate next = announced.higher(day(quote));
        Map.Entry<LocalDate, Unpriced> withdrawal = withdrawals.higherEntry(day(quote));
        Unpriced endedBy = null;
        if (withdrawal != null && (next == null || next.isAfter(withdrawal.getKey()))) {
            LocalDate end = withdrawal.getKey().minusDays(1);
            endedBy = last == null || last.isAfter(end) ? withdrawal.getValue() : null;
            last = earlier(last, end);
        }
        return new OrderDays(first, next == null ? last : earlier(last, next.minusDays(1)), next, endedBy);
    }

    private static LocalDate earlier(@Nullable LocalDate one, LocalDate other) {
        return one != null && one.isBefore(other) ? one : other;
    }
}
