package perkilo.ordering;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import perkilo.purchasing.Need;

/**
 * Stock at the start that can be used for longer than a purchase could.
 *
 * <p>What expires first is used first. Stock that expires before any purchase is simply used before all purchases, and
 * the needs that it covers are left out beforehand. Stock that outlasts purchases is used after them, and what it
 * covers depends on what is bought.
 */
final class Outlasting {

    private Outlasting() {}

    /** Lots that outlast a purchase of the first period, where that makes a difference; the first to expire first. */
    static List<Need.Lot> lots(Need need) {
        int periods = need.perPeriod().size();
        if (need.usablePeriods() >= periods && need.creditPerUnit().signum() == 0) {
            return List.of();
        }
        return need.stock().stream()
                .filter(lot -> outlasts(lot, need))
                .sorted(Comparator.comparingInt(Need.Lot::usablePeriods))
                .toList();
    }

    private static boolean outlasts(Need.Lot lot, Need need) {
        return lot.quantity().signum() > 0 && lot.usablePeriods() > need.usablePeriods();
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
