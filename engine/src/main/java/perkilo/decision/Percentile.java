package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;

/**
 * Percentiles of a sample, with straight lines between its values: of n sorted values x, the one at p is x at the place
 * 1 + (n − 1) p. Definition 7 of R. J. Hyndman and Y. Fan, Sample Quantiles in Statistical Packages, The American
 * Statistician 50 (1996), 361–365; the function PERCENTILE of spreadsheets.
 */
final class Percentile {

    /** The least, middle and greatest percentile of a band: 5 %, 50 %, 95 %. */
    static final BigDecimal LOW = new BigDecimal("0.05");

    static final BigDecimal MIDDLE = new BigDecimal("0.5");
    static final BigDecimal HIGH = new BigDecimal("0.95");

    private final BigDecimal[] sorted;

    /** Of at least one value, in any order. */
    Percentile(List<BigDecimal> values) {
        this.sorted = values.toArray(new BigDecimal[0]);
        Arrays.sort(sorted);
    }

    /**
     * One of them.
     *
     * @param fraction from 0 to 1
     */
    BigDecimal at(BigDecimal fraction) {
        BigDecimal place = fraction.multiply(BigDecimal.valueOf(sorted.length - 1L));
        int below = place.intValue();
        BigDecimal beyond = place.subtract(BigDecimal.valueOf(below));
        BigDecimal lower = sorted[below];
        return beyond.signum() == 0
                ? lower
                : lower.add(sorted[below + 1].subtract(lower).multiply(beyond), MathContext.DECIMAL128);
    }
}
