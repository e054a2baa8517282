package perkilo.offers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;

/**
 * All quotes, as seen on a day. It answers one question: at which prices can one order on a day? {@link PackHistory}
 * has the rules.
 *
 * <p>It has no answer for earlier days.
 */
public final class OfferHistory {

    private final List<Offer> quotes;
    private final LocalDate today;
    private final AgeLimit ageLimit;
    /** Packs with more than one quote: only their quotes depend on each other. */
    private final Map<PackOffered, PackHistory> packs = new HashMap<>();

    /**
     * All quotes.
     *
     * @param quotes in the order of the sheets; superseded ones included
     * @param unpriced rows of lists that name a pack without a price
     * @param today the day as seen from
     * @param ageLimit the days after which a quote without a last day ends that a newer one has followed
     */
    public OfferHistory(Collection<Offer> quotes, Collection<Unpriced> unpriced, LocalDate today, AgeLimit ageLimit) {
        this.quotes = List.copyOf(quotes);
        this.today = today;
        this.ageLimit = ageLimit;
        Map<PackOffered, List<Unpriced>> withoutPrice = new HashMap<>();
        for (Unpriced one : unpriced) {
            withoutPrice.computeIfAbsent(one.pack(), pack -> new ArrayList<>()).add(one);
        }
        Map<PackOffered, List<Offer>> byPack = new HashMap<>(2 * this.quotes.size());
        for (Offer quote : this.quotes) {
            byPack.merge(PackOffered.of(quote), List.of(quote), OfferHistory::joined);
        }
        byPack.forEach((pack, ofPack) -> {
            List<Unpriced> rows = withoutPrice.getOrDefault(pack, List.of());
            if (ofPack.size() > 1 || !rows.isEmpty()) {
                packs.put(pack, new PackHistory(ofPack, rows, today, ageLimit));
            }
        });
    }

    /** A history without lists that name a pack without a price. */
    public OfferHistory(Collection<Offer> quotes, LocalDate today, AgeLimit ageLimit) {
        this(quotes, List.of(), today, ageLimit);
    }

    private static List<Offer> joined(List<Offer> before, List<Offer> more) {
        List<Offer> all = before.size() == 1 ? new ArrayList<>(before) : before;
        all.addAll(more);
        return all;
    }

    /** The state of one of the quotes. */
    public QuoteLife lifeOf(Offer quote) {
        PackHistory pack = packOf(quote);
        return pack == null
                ? new PackHistory(List.of(quote), List.of(), today, ageLimit).lifeOf(quote)
                : pack.lifeOf(quote);
    }

    /** The days on which orders can be placed at one of the quotes, from today on; none if it does not count. */
    public List<OrderDays> orderDays(Offer quote) {
        PackHistory pack = packOf(quote);
        return pack == null ? aloneOn(quote) : pack.orderDays(quote);
    }

    /** The list that ends a quote because it names the pack without a price; null if there is none. */
    public @Nullable Unpriced endedBy(Offer quote) {
        PackHistory pack = packOf(quote);
        return pack == null ? null : pack.endedBy(quote);
    }

    private @Nullable PackHistory packOf(Offer quote) {
        return packs.isEmpty() ? null : packs.get(PackOffered.of(quote));
    }

    /** The days of the only quote of a pack: most packs of a long list have one. */
    private List<OrderDays> aloneOn(Offer quote) {
        Validity validity = quote.validity();
        LocalDate first = validity.beginsAfter(today) ? validity.day() : today;
        return validity.endsBefore(first)
                ? List.of()
                : List.of(new OrderDays(first, validity.validUntil(), null, null, null));
    }

    /** The prices that can be ordered at on a day, in the order of the sheets. */
    public List<Offer> orderableOn(LocalDate day) {
        return orderable(days -> days.contains(day));
    }

    /** The prices of an item that can be ordered at on a day, in the order of the sheets. */
    public List<Offer> orderableOn(LocalDate day, String item) {
        String key = Names.key(item);
        return quotes.stream()
                .filter(quote -> Names.key(quote.item()).equals(key) && isOrderableOn(day, quote))
                .toList();
    }

    /** The prices that can be ordered at today, or on a later day up to another one. */
    public List<Offer> orderableUntil(LocalDate lastDay) {
        return orderable(days -> days.contains(today) || !days.first().isAfter(lastDay));
    }

    /** Whether an order can be placed on a day at one of the quotes. */
    public boolean isOrderableOn(LocalDate day, Offer quote) {
        return orderDays(quote).stream().anyMatch(days -> days.contains(day));
    }

    private List<Offer> orderable(Predicate<OrderDays> when) {
        List<Offer> orderable = new ArrayList<>();
        for (Offer quote : quotes) {
            if (orderDays(quote).stream().anyMatch(when)) {
                orderable.add(quote);
            }
        }
        return orderable;
    }
}
