package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import perkilo.purchasing.Need;

/**
 * Stock, and goods on order, that can be used for longer than a purchase could.
 *
 * <p>Goods that expire first are used first. Goods that expire before every purchase that could be used beside them are
 * used before all purchases, and the needs that they cover are left out beforehand. Goods that outlast a purchase are
 * used after it, and the needs that they cover depend on the purchases.
 */
final class Outlasting {

    private Outlasting() {}

    /** Lots that outlast a purchase, if that makes a difference; the first to expire comes first. */
    static List<Need.Lot> lots(Need need) {
        int periods = need.perPeriod().size();
        if (need.usablePeriods() >= periods && need.creditPerUnit().signum() == 0) {
            return List.of();
        }
        return need.stock().stream()
                .filter(lot -> outlasts(lot, need))
                .sorted(Comparator.comparingInt(Need.Lot::lastPeriod))
                .toList();
    }

    /**
     * Of the purchases that can be used together with a lot, the first expires first, but not before the lot is there.
     */
    private static boolean outlasts(Need.Lot lot, Need need) {
        int firstPurchase = Need.lastPeriod(0, need.usablePeriods());
        return lot.quantity().signum() > 0
                && lot.arrival() < need.perPeriod().size()
                && lot.lastPeriod() > Math.max(firstPurchase, lot.arrival());
    }

    /**
     * The first period whose purchases expire no sooner than a lot: from then on, the lot is used before what is
     * bought. It may be beyond all periods.
     */
    static long firstBefore(Need.Lot lot, Need need) {
        return lot.lastPeriod() + 1L - need.usablePeriods();
    }

    /** What is needed per period once the stock that does not outlast purchases is used up. */
    static List<BigDecimal> netOfOther(Need need) {
        List<Need.Lot> outlasting = lots(need);
        List<Need.Lot> other =
                need.stock().stream().filter(lot -> !outlasting.contains(lot)).toList();
        return new Need(
                        need.item(),
                        need.perPeriod(),
                        other,
                        need.usablePeriods(),
                        need.holdingPerUnit(),
                        need.creditPerUnit(),
                        need.creditable())
                .net();
    }
}
