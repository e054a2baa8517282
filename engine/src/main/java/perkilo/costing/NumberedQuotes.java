package perkilo.costing;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import perkilo.purchasing.Quote;

/** The quotes for one item, numbered by the need that they stand for; the same for all problems of one period. */
final class NumberedQuotes {

    private final List<Quote> quotes;
    private final Map<Integer, List<Quote>> byNeed = new ConcurrentHashMap<>();

    /**
     * Quotes to be numbered.
     *
     * @param quotes in the order of the sheets, for any need
     */
    NumberedQuotes(List<Quote> quotes) {
        this.quotes = List.copyOf(quotes);
    }

    /**
     * The quotes for a need of a problem of one period.
     *
     * @param need its index in the problem
     */
    List<Quote> forNeed(int need) {
        List<Quote> known = byNeed.get(need);
        return known != null ? known : byNeed.computeIfAbsent(need, this::numbered);
    }

    private List<Quote> numbered(int need) {
        return quotes.stream().map(quote -> quote.forNeed(need, 0, 0)).toList();
    }
}
