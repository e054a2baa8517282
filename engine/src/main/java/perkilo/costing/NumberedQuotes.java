package perkilo.costing;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import perkilo.purchasing.Quote;

/** The quotes for one item with the index of its need; shared by all problems of one period. */
final class NumberedQuotes {

    /** Few formulas have more materials. */
    private static final int MOST_NEEDS = 32;

    /** Items with more quotes are not kept: that would take much memory and save little time. */
    private static final int MOST_QUOTES = 8;

    private final List<Quote> quotes;
    private final AtomicReferenceArray<List<Quote>> byNeed = new AtomicReferenceArray<>(MOST_NEEDS);

    /**
     * Quotes that get the index of a need.
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
        if (need >= MOST_NEEDS || quotes.size() > MOST_QUOTES) {
            return numbered(need);
        }
        List<Quote> known = byNeed.get(need);
        if (known == null) {
            known = numbered(need);
            byNeed.set(need, known);
        }
        return known;
    }

    private List<Quote> numbered(int need) {
        return quotes.stream().map(quote -> quote.forNeed(need, 0, 0)).toList();
    }
}
