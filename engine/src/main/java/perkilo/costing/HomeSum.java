package perkilo.costing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Adds up amounts in several currencies: each currency for itself, and converts the sums.
 *
 * <p>It comes to the same, digit by digit, as converting each amount: nothing is rounded. But a rate may have 34
 * digits, and sums of short decimals are several times as fast.
 */
final class HomeSum {

    private final List<BigDecimal> rates = new ArrayList<>();
    private final List<BigDecimal> sums = new ArrayList<>();

    /**
     * Adds an amount.
     *
     * @param toHome home currency for one unit of the amount's
     */
    void add(BigDecimal amount, BigDecimal toHome) {
        int known = rates.indexOf(toHome);
        if (known < 0) {
            rates.add(toHome);
            sums.add(amount);
        } else {
            sums.set(known, sums.get(known).add(amount));
        }
    }

    /** The sum in home currency. */
    BigDecimal total() {
        BigDecimal total = BigDecimal.ZERO;
        for (int at = 0; at < sums.size(); at++) {
            total = total.add(sums.get(at).multiply(rates.get(at)));
        }
        return total;
    }
}
