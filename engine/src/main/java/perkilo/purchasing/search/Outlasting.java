package perkilo.purchasing.search;

import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import perkilo.purchasing.Need;

/**
 * Stock, and goods on order, that can be used for longer than a purchase could.
 *
 * <p>Goods that expire first are used first. Goods that expire before every purchase that could be used beside them are
 * used before all purchases, and the needs that they cover are left out beforehand. Goods that outlast a purchase are
 * used after it, and the needs that they cover depend on the purchases.
 */
final class Outlasting {
    private final Need need;
    private final List<Need.Lot> lots;

    /**
     * The lots of a need.
     *
     * @param lasts the last periods of use of all purchases
     */
    Outlasting(Need need, SortedSet<Integer> lasts) {
        this.need = need;
        int periods = need.perPeriod().size();
        int firstPurchase = lasts.isEmpty() ? Need.UNLIMITED : lasts.first();
        boolean matters = firstPurchase < periods || need.creditPerUnit().signum() > 0;
        lots = matters
                ? need.stock().stream()
                        .filter(lot -> outlasts(lot, firstPurchase))
                        .sorted(Comparator.comparingInt(Need.Lot::lastPeriod))
                        .toList()
                : List.of();
    }

    /** Lots that outlast a purchase, if that makes a difference; the first to expire comes first. */
    List<Need.Lot> lots() {
        return lots;
    }

    /**
     * Of the purchases that can be used together with a lot, the first expires first, but not before the lot is there.
     */
    private boolean outlasts(Need.Lot lot, int firstPurchase) {
        return lot.quantity().signum() > 0
                && lot.arrival() < need.perPeriod().size()
                && lot.lastPeriod() > Math.max(firstPurchase, lot.arrival());
    }

    /** The need without the stock that outlasts purchases. */
    Need withoutLots() {
        return new Need(
                need.item(),
                need.perPeriod(),
                need.stock().stream().filter(lot -> !lots.contains(lot)).toList(),
                need.usablePeriods(),
                need.holdingPerUnit(),
                need.creditPerUnit(),
                need.creditable(),
                need.lengths(),
                need.safety());
    }
}
