package perkilo.costing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import perkilo.offers.Offer;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/**
 * The offers of a market for one item, with figures that are the same for every run.
 *
 * @param listings in the order of the sheets
 * @param current those that are valid on the costing date; all if none is
 * @param isOffered whether any is valid on the costing date
 * @param quotes the listings as a planner sees them
 * @param lowestPrice the lowest goods price of a kilogram or piece of the current ones, in home currency; null if there
 *     is no offer
 * @param beyondNeed the most that may be bought beyond a need: for each offer enough for its last price break, its
 *     minimum and its supplier's minimum order value
 */
record Assortment(
        List<Listing> listings,
        List<Listing> current,
        boolean isOffered,
        NumberedQuotes quotes,
        @Nullable BigDecimal lowestPrice,
        BigDecimal beyondNeed) {

    /** Nothing is offered. */
    static final Assortment NONE =
            new Assortment(List.of(), List.of(), false, new NumberedQuotes(List.of()), null, BigDecimal.ZERO);

    Assortment {
        listings = List.copyOf(listings);
        current = List.copyOf(current);
    }

    /**
     * The assortment of one item.
     *
     * @param listings of one item
     * @param vendors of the market
     * @param holds whether an offer is valid on the costing date
     */
    static Assortment of(List<Listing> listings, List<Vendor> vendors, Predicate<Offer> holds) {
        List<Listing> holding = holding(listings, holds);
        List<Listing> current = holding.isEmpty() ? listings : holding;
        List<Quote> quotes = new ArrayList<>();
        BigDecimal lowest = null;
        BigDecimal beyond = BigDecimal.ZERO;
        for (Listing listing : listings) {
            Quote quote = listing.quote(0, 0, 0);
            quotes.add(quote);
            beyond = beyond.add(largestLine(quote, vendors.get(quote.vendor())));
        }
        for (Listing listing : current) {
            BigDecimal price = listing.lowestPrice();
            lowest = lowest == null ? price : lowest.min(price);
        }
        return new Assortment(listings, current, !holding.isEmpty(), new NumberedQuotes(quotes), lowest, beyond);
    }

    private static List<Listing> holding(List<Listing> listings, Predicate<Offer> holds) {
        List<Listing> holding = new ArrayList<>(listings.size());
        for (Listing listing : listings) {
            if (holds.test(listing.offer())) {
                holding.add(listing);
            }
        }
        return holding;
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
