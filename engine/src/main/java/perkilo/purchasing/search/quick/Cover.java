package perkilo.purchasing.search.quick;

import java.math.BigDecimal;
import java.util.List;

/**
 * Packs that cover one item's need.
 *
 * @param picks what is bought
 * @param cost landed cost in home currency, without the charges of orders as a whole, less the value of leftovers
 * @param bound no cover of the need from these vendors costs less
 */
record Cover(List<Pick> picks, double cost, double bound) {

    Cover {
        picks = List.copyOf(picks);
    }

    /** Packs of one quote. */
    record Pick(PackPrice price, long packs) {}

    /** The vendors bought from, one bit each. */
    int vendors() {
        int vendors = 0;
        for (Pick pick : picks) {
            vendors |= 1 << pick.price().vendor();
        }
        return vendors;
    }

    /** Whether packs cover a quantity, exactly. */
    static boolean suffices(List<Pick> picks, BigDecimal quantity) {
        BigDecimal bought = BigDecimal.ZERO;
        for (Pick pick : picks) {
            bought = bought.add(pick.price().quote().quantity(pick.packs()));
        }
        return bought.compareTo(quantity) >= 0;
    }
}
