package perkilo.xlsx.grid;

import java.math.BigDecimal;
import java.math.MathContext;

/** Doubles as the decimals that a person typed. */
final class Decimal {

    private static final int ALWAYS_EXACT = 15;
    private static final int ALWAYS_ENOUGH = 17;

    private Decimal() {}

    /**
     * The shortest decimal that is read as this double: 0.1 for the double that is nearest to 0.1.
     *
     * <p>Fifteen digits are always preserved by a double; seventeen always reproduce it.
     *
     * @param number finite
     */
    static BigDecimal shortest(double number) {
        BigDecimal exact = new BigDecimal(number);
        for (int digits = ALWAYS_EXACT; digits < ALWAYS_ENOUGH; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.doubleValue() == number) {
                return tidy(rounded);
            }
        }
        return tidy(exact.round(new MathContext(ALWAYS_ENOUGH)));
    }

    /** The same number without zeros at its end. */
    static BigDecimal tidy(BigDecimal decimal) {
        BigDecimal stripped = decimal.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
