package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A position of an item's supply with the rest of its lots, and the cheapest way to it.
 *
 * @param supply effective: all needs up to here are covered
 * @param left by lot: what is left
 * @param before the position that it was reached from; null at the start
 * @param offer the offer bought last; null if nothing was bought
 * @param steps how many steps of that offer
 */
record Shelved(
        BigDecimal supply,
        List<BigDecimal> left,
        double cost,
        @Nullable Shelved before,
        @Nullable PackChoice offer,
        long steps) {

    /** The position further on, with goods from lots. */
    Shelved moved(BigDecimal to, List<BigDecimal> leftThen) {
        return new Shelved(to, leftThen, cost, this, null, 0);
    }

    Shelved bought(BigDecimal to, List<BigDecimal> leftThen, double lineCost, PackChoice byOffer, long stepsOfIt) {
        return new Shelved(to, leftThen, cost + lineCost, this, byOffer, stepsOfIt);
    }

    Shelved charged(double charge) {
        return new Shelved(supply, left, cost + charge, this, null, 0);
    }

    /** Whether it is as good as another one in supply and in every lot. */
    boolean covers(Shelved other) {
        if (supply.compareTo(other.supply) < 0) {
            return false;
        }
        for (int l = 0; l < left.size(); l++) {
            if (left.get(l).compareTo(other.left.get(l)) < 0) {
                return false;
            }
        }
        return true;
    }
}
