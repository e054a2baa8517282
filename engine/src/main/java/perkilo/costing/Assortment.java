package perkilo.costing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/**
 * What a market offers of one item, and what of that is the same for every run.
 *
 * @param listings in the order of the sheets
 * @param quotes the listings as a planner sees them
 * @param lowestPrice the lowest goods price of a kilogram or piece, in home currency; null where nobody offers any
 * @param beyondNeed what may be bought on top of a need: for each offer what reaches its last price break, its minimum
 *     and its supplier's minimum order value
 */
record Assortment(
        List<Listing> listings,
        NumberedQuotes quotes,
        @Nullable BigDecimal lowestPrice,
        BigDecimal beyondNeed) {

    /** Nothing is offered. */
    static final Assortment NONE = new Assortment(List.of(), new NumberedQuotes(List.of()), null, BigDecimal.ZERO);

    Assortment {
        listings = List.copyOf(listings);
    }

    /**
     * What is offered.
     *
     * @param listings of one item
     * @param vendors of the market
     */
    static Assortment of(List<Listing> listings, List<Vendor> vendors) {
        List<Quote> quotes = new ArrayList<>();
        BigDecimal lowest = null;
        BigDecimal beyond = BigDecimal.ZERO;
        for (Listing listing : listings) {
            Quote quote = listing.quote(0, 0, 0);
            quotes.add(quote);
            BigDecimal price = listing.lowestPrice();
            lowest = lowest == null ? price : lowest.min(price);
            beyond = beyond.add(largestLine(quote, vendors.get(quote.vendor())));
        }
        return new Assortment(listings, new NumberedQuotes(quotes), lowest, beyond);
    }

    private static BigDecimal largestLine(Quote quote, Vendor vendor) {
        Tier last = quote.tiers().get(quote.tiers().size() - 1);
        BigDecimal line = quote.smallestLine().max(last.from());
        BigDecimal price = last.pricePerPack().multiply(quote.toVendorCurrency());
        if (price.signum() > 0) {
            BigDecimal packs = vendor.minimumOrderValue().divide(price, 0, RoundingMode.CEILING);
            line = line.max(packs.multiply(quote.packSize()));
        }
        return quote.quantity(quote.packsFor(line));
    }
}
