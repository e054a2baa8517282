package perkilo.purchasing.search.quick;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Vendor;

/** The results for the items of one market: their prices, and the covers of needs. */
final class MarketPrices {

    /** How many needs are remembered in a market. */
    private static final int MOST_NEEDS = 50_000;

    private final List<Vendor> vendors;
    private final Map<String, ItemPrices> byItem = new ConcurrentHashMap<>();
    private final Remembered<Asked, Optional<Cover>> cheapest = new Remembered<>(MOST_NEEDS);
    private final Remembered<Asked, ItemCovers> covers = new Remembered<>(MOST_NEEDS);
    private final KnownPurchases purchases = new KnownPurchases();

    MarketPrices(List<Vendor> vendors) {
        this.vendors = vendors;
    }

    private record Asked(ItemPrices prices, Wanted wanted) {

        /**
         * Explicit: a generated equals and hashCode cost milliseconds at start-up (see engine/docs/measurements.md).
         */
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Asked asked && prices.equals(asked.prices) && wanted.equals(asked.wanted);
        }

        @Override
        public int hashCode() {
            return prices.hashCode() * 31 + wanted.hashCode();
        }
    }

    /** Whether this is the market of this very list object; quicker to check than {@link #isOf}. */
    @SuppressWarnings("ReferenceEquality")
    boolean isOfThese(List<Vendor> others) {
        return vendors == others;
    }

    /** Whether this is the market of equal vendors. */
    boolean isOf(List<Vendor> others) {
        return vendors.equals(others);
    }

    /**
     * The prices of an item. If there are two sets of quotes for one name, the last one used is remembered.
     *
     * @param quotes the quotes of a problem
     * @param own which of them are for the item
     */
    ItemPrices prices(String item, List<Quote> quotes, int[] own) {
        ItemPrices known = byItem.get(item);
        if (known == null || !known.areOf(quotes, own)) {
            known = ItemPrices.of(Arrays.stream(own).mapToObj(quotes::get).toList(), vendors);
            byItem.put(item, known);
        }
        return known;
    }

    /** The cheapest cover of a need from all vendors; empty without prices. */
    Optional<Cover> cheapest(ItemPrices prices, Wanted wanted) {
        return cheapest.of(
                new Asked(prices, wanted),
                asked -> Optional.ofNullable(Covering.cheapest(asked.prices.all(), asked.wanted)));
    }

    /** Purchases that others can start from. */
    KnownPurchases purchases() {
        return purchases;
    }

    /** The covers of a need. */
    ItemCovers covers(ItemPrices prices, Wanted wanted) {
        return covers.of(new Asked(prices, wanted), asked -> new ItemCovers(asked.prices(), asked.wanted()));
    }
}
