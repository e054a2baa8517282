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
    /** Packs with more than one quote: only their quotes depend on each other. */
    private final Map<PackOffered, PackHistory> packs = new HashMap<>();

    /**
     * All quotes.
     *
     * @param quotes in the order of the sheets; superseded ones included
     * @param unpriced rows of lists that name a pack without a price
     * @param today the day as seen from
     */
    public OfferHistory(Collection<Offer> quotes, Collection<Unpriced> unpriced, LocalDate today) {
        this.quotes = List.copyOf(quotes);
        this.today = today;
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
                packs.put(pack, new PackHistory(ofPack, rows, today));
            }
        });
    }

    /** A history without lists that name a pack without a price. */
    public OfferHistory(Collection<Offer> quotes, LocalDate today) {
        this(quotes, List.of(), today);
    }

    private static List<Offer> joined(List<Offer> before, List<Offer> more) {
        List<Offer> all = before.size() == 1 ? new ArrayList<>(before) : before;
        all.addAll(more);
        return all;
    }

    /** The state of one of the quotes. */
    public QuoteLife lifeOf(Offer quote) {
        return packOf(quote).lifeOf(quote);
    }

    /** The days on which orders can be placed at one of the quotes; null if there are none. */
    public @Nullable OrderDays orderDays(Offer quote) {
        return packOf(quote).orderDays(quote);
    }

    private PackHistory packOf(Offer quote) {
        PackHistory known = packs.isEmpty() ? null : packs.get(PackOffered.of(quote));
        return known == null ? new PackHistory(List.of(quote), List.of(), today) : known;
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
        OrderDays days = orderDays(quote);
        return days != null && days.contains(day);
    }

    private List<Offer> orderable(Predicate<OrderDays> when) {
        List<Offer> orderable = new ArrayList<>();
        for (Offer quote : quotes) {
            OrderDays days = orderDays(quote);
            if (days != null && when.test(days)) {
                orderable.add(quote);
            }
        }
        return orderable;
    }
}
