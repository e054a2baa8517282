package perkilo.purchasing.search.quick;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Vendor;

/** The markets of recent purchases, distinguished by their vendors. */
final class Markets {

    /** How many markets are remembered; the next one replaces the oldest. */
    private static final int MOST = 8;

    private final List<MarketPrices> known = new CopyOnWriteArrayList<>();

    /** The market of some vendors. */
    MarketPrices of(List<Vendor> vendors) {
        MarketPrices market = find(vendors);
        return market == null ? add(vendors) : market;
    }

    private @Nullable MarketPrices find(List<Vendor> vendors) {
        for (MarketPrices market : known) {
            if (market.isOfThese(vendors)) {
                return market;
            }
        }
        for (MarketPrices market : known) {
            if (market.isOf(vendors)) {
                return market;
            }
        }
        return null;
    }

    private synchronized MarketPrices add(List<Vendor> vendors) {
        MarketPrices meanwhile = find(vendors);
        if (meanwhile != null) {
            return meanwhile;
        }
        MarketPrices market = new MarketPrices(vendors);
        if (known.size() == MOST) {
            known.remove(0);
        }
        known.add(market);
        return market;
    }
}
