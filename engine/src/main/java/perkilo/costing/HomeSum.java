package perkilo.costing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A sum of amounts in several currencies: adds up each currency, then converts the sums.
 *
 * <p>The result is exactly the same as converting each amount, because nothing is rounded. But a rate may have 34
 * digits, and adding short decimals is several times faster.
 */
final class HomeSum {

    private final List<BigDecimal> rates = new ArrayList<>();
    private final List<BigDecimal> sums = new ArrayList<>();

    /**
     * Adds an amount.
     *
     * @param toHome home currency for one unit of the amount's currency
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
