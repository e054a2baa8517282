package perkilo.swaps.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Figures and names as they are written in a sentence. */
public final class TrialWords {

    private static final int PERCENT_DECIMALS = 4;

    private TrialWords() {}

    /** A fraction as a percentage: {@code 2.5 %}. */
    public static String percent(BigDecimal fraction) {
        return plain(fraction.movePointRight(2).setScale(PERCENT_DECIMALS, RoundingMode.HALF_UP)) + " %";
    }

    /** A number without trailing zeros. */
    public static String plain(BigDecimal value) {
        BigDecimal shortest = value.stripTrailingZeros();
        return (shortest.scale() < 0 ? shortest.setScale(0) : shortest).toPlainString();
    }

    /** A name as the first word of a sentence: {@code Use range}; {@code pH} stays as it is. */
    public static String capital(String name) {
        return name.length() > 1 && Character.isUpperCase(name.charAt(1))
                ? name
                : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    /** A number with at most one decimal. */
    public static String oneDecimal(BigDecimal value) {
        return plain(value.setScale(1, RoundingMode.HALF_UP));
    }
}
