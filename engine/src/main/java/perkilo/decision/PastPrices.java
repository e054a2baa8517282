package perkilo.decision;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.offers.PackOffered;
import perkilo.offers.history.QuotedPrice;

/** What packs cost by earlier lists: the price at a quantity, by the day of the quote. */
final class PastPrices {

    /** The least number of lists of a pack: with two there is one change, which says nothing of the next. */
    static final int LEAST_DATES = 3;

    private final Map<String, List<Offer>> byItem = new HashMap<>();

    /**
     * Prices of earlier lists.
     *
     * @param quotes of all lists
     * @param last later lists do not count
     */
    PastPrices(List<Offer> quotes, LocalDate last) {
        for (Offer quote : quotes) {
            LocalDate day = quote.quotedOn();
            if (day != null && !day.isAfter(last)) {
                byItem.computeIfAbsent(Names.key(quote.item()), item -> new ArrayList<>(1))
                        .add(quote);
            }
        }
    }

    /**
     * The prices of one unit of a pack, by day; those in another currency or unit than today's do not count, nor what
     * is older than such a price.
     *
     * @param now today's quote
     * @param quantity in its pack unit
     */
    NavigableMap<LocalDate, BigDecimal> of(Offer now, BigDecimal quantity) {
        List<Offer> ofItem = byItem.getOrDefault(Names.key(now.item()), List.of());
        NavigableMap<LocalDate, BigDecimal> days = new TreeMap<>();
        if (ofItem.size() < LEAST_DATES) {
            return days;
        }
        PackOffered pack = PackOffered.of(now);
        QuotedPrice today = QuotedPrice.of(now, quantity);
        LocalDate other = LocalDate.MIN;
        for (Offer quote : ofItem) {
            LocalDate day = quote.quotedOn();
            if (day == null || !PackOffered.of(quote).equals(pack)) {
                continue;
            }
            QuotedPrice then = QuotedPrice.of(quote, quantity);
            boolean alike = then.unit() == today.unit() && quote.currency().equals(now.currency());
            if (alike) {
                days.putIfAbsent(day, then.perUnit());
            } else if (day.isAfter(other)) {
                other = day;
            }
        }
        return days.tailMap(other, false);
    }
}
