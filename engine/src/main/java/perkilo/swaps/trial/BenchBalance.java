package perkilo.swaps.trial;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Levels as a bench balance weighs them: to 0.01 % of the formula, below 0.1 % to three significant digits. Common
 * practice.
 */
public final class BenchBalance {

    private static final BigDecimal SMALL = new BigDecimal("0.001");
    private static final int DECIMALS = 4;
    private static final MathContext DIGITS = new MathContext(3, RoundingMode.HALF_UP);

    private BenchBalance() {}

    /**
     * The nearest level that can be weighed.
     *
     * @param level as a fraction of the formula
     */
    public static BigDecimal rounded(BigDecimal level) {
        return level.abs().compareTo(SMALL) < 0 ? level.round(DIGITS) : level.setScale(DECIMALS, RoundingMode.HALF_UP);
    }
}
