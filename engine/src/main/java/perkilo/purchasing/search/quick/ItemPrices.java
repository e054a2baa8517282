package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Vendor;

/** The prices of one item in one market, sorted for the search; they do not depend on the quantity needed. */
final class ItemPrices {

    private final List<Quote> quotes;
    private final Offered all;
    private final int[] vendors;
    private final boolean freeOfOrderCharges;
    private final AtomicReferenceArray<Offered> bySet;

    private ItemPrices(List<Quote> quotes, List<PackPrice> prices, boolean freeOfOrderCharges) {
        this.quotes = quotes;
        this.all = new Offered(prices);
        this.vendors =
                prices.stream().mapToInt(PackPrice::vendor).distinct().sorted().toArray();
        this.freeOfOrderCharges = freeOfOrderCharges;
        this.bySet = new AtomicReferenceArray<>(1 << Math.min(vendors.length, ItemCovers.MOST_VENDORS));
    }

    /**
     * The prices of an item.
     *
     * @param quotes all that a problem has for it
     * @param vendors of the problem
     */
    static ItemPrices of(List<Quote> quotes, List<Vendor> vendors) {
        List<PackPrice> prices = new ArrayList<>();
        boolean free = true;
        for (int i = 0; i < quotes.size(); i++) {
            Quote quote = quotes.get(i);
            if (isForNow(quote)) {
                Vendor vendor = vendors.get(quote.vendor());
                prices.add(new PackPrice(quote, i, vendor));
                free &= vendor.freightPerOrder().signum() == 0
                        && vendor.minimumOrderValue().signum() == 0;
            }
        }
        return new ItemPrices(List.copyOf(quotes), prices, free);
    }

    /** The prices of some vendors, the cheapest per unit first, with figures for each one and all after it. */
    static final class Offered {
        private final PackPrice[] prices;
        private final double[] rateFrom;
        private final double[] roundedOffFrom;

        Offered(List<PackPrice> offered) {
            prices = offered.stream().sorted(ItemPrices::cheapestFirst).toArray(PackPrice[]::new);
            rateFrom = new double[prices.length + 1];
            roundedOffFrom = new double[prices.length + 1];
            rateFrom[prices.length] = Double.POSITIVE_INFINITY;
            for (int i = prices.length - 1; i >= 0; i--) {
                rateFrom[i] = Math.min(rateFrom[i + 1], prices[i].lowestRate());
                roundedOffFrom[i] = roundedOffFrom[i + 1] + prices[i].roundedOff();
            }
        }

        int count() {
            return prices.length;
        }

        PackPrice price(int at) {
            return prices[at];
        }

        /** The least cost of covering a quantity with the prices from here on. */
        double least(int at, double quantity) {
            return quantity * rateFrom[at] - roundedOffFrom[at];
        }
    }

    /**
     * Whether these are the prices of some quotes, for whichever need.
     *
     * @param others the quotes of a problem
     * @param own which of them are for the item
     */
    boolean areOf(List<Quote> others, int[] own) {
        if (own.length != quotes.size()) {
            return false;
        }
        for (int i = 0; i < own.length; i++) {
            Quote known = quotes.get(i);
            Quote other = others.get(own[i]);
            boolean sameTime = isForNow(known) == isForNow(other);
            if (!sameTime || !known.hasTermsOf(other)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isForNow(Quote quote) {
        return quote.firstPeriod() <= 0 && quote.lastPeriod() >= 0;
    }

    /** The vendors that sell it, in rising order. */
    int[] vendors() {
        return vendors.clone();
    }

    /** The vendors that sell it, one bit each. */
    int sellers() {
        return Arrays.stream(vendors).map(vendor -> 1 << vendor).reduce(0, (one, other) -> one | other);
    }

    /** Whether orders for it have no charges and no minimum. */
    boolean isFreeOfOrderCharges() {
        return freeOfOrderCharges;
    }

    /** The prices of all vendors. */
    Offered all() {
        return all;
    }

    /**
     * The prices of some vendors.
     *
     * @param set one bit each, in the order of {@link #vendors()}
     */
    Offered from(int set) {
        Offered known = bySet.get(set);
        if (known == null) {
            known = new Offered(Arrays.stream(all.prices)
                    .filter(price -> (set >> Arrays.binarySearch(vendors, price.vendor()) & 1) == 1)
                    .toList());
            bySet.set(set, known);
        }
        return known;
    }

    /** Whether buying more than is wanted never pays: each pack costs more than its leftover is worth. */
    boolean neverPayForMore(Wanted wanted) {
        if (wanted.credit() == 0) {
            return true;
        }
        for (PackPrice price : all.prices) {
            double more = (price.lowestRate() - wanted.credit()) * price.packSize();
            if (more < price.minorUnit() || more <= 0) {
                return false;
            }
        }
        return true;
    }

    private static int cheapestFirst(PackPrice one, PackPrice other) {
        int byRate = Double.compare(one.lowestRate(), other.lowestRate());
        return byRate == 0 ? Integer.compare(one.index(), other.index()) : byRate;
    }
}
