package perkilo.costing;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import perkilo.purchasing.Quote;

/** The quotes for one item, numbered by the need that they stand for; the same for all problems of one period. */
final class NumberedQuotes {

    /** Few formulas have more materials than this. */
    private static final int MOST_NEEDS = 32;

    /**
     * Of items with more quotes nothing is kept: it would take much room, and numbering is not what takes long there.
     */
    private static final int MOST_QUOTES = 8;

    private final List<Quote> quotes;
    private final AtomicReferenceArray<List<Quote>> byNeed = new AtomicReferenceArray<>(MOST_NEEDS);

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
