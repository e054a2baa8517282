package perkilo.purchasing;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * Quotients to 34 significant digits.
 *
 * <p>Most quotients in costing end after a few decimals. Dividing to 34 digits and then removing the zeros is slow, so
 * these are computed in whole numbers; the result is the same to the last digit.
 */
public final class Quotient {

    private static final MathContext DIGITS = MathContext.DECIMAL128;

    /** The digits that fit into a long. */
    private static final int SHORT = 18;

    private static final int MOST_DECIMALS = 6;

    private Quotient() {}

    /** The quotient of two decimals, the divisor not zero. */
    public static BigDecimal of(BigDecimal dividend, BigDecimal divisor) {
        BigDecimal exact = exact(dividend, divisor);
        return exact == null ? dividend.divide(divisor, DIGITS) : exact;
    }

    /** The quotient if it ends after a few decimals; null if it does not, or if the decimals are long. */
    static @Nullable BigDecimal exact(BigDecimal dividend, BigDecimal divisor) {
        if (dividend.signum() == 0 || dividend.precision() > SHORT || divisor.precision() > SHORT) {
            return null;
        }
        long rest = dividend.unscaledValue().longValue();
        long by = divisor.unscaledValue().longValue();
        int scale = dividend.scale() - divisor.scale();
        for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
            if (rest % by == 0) {
                return BigDecimal.valueOf(rest / by, scale + decimals);
            }
            if (Math.abs(rest) > Long.MAX_VALUE / 10) {
                return null;
            }
            rest *= 10;
        }
        return null;
    }
}
