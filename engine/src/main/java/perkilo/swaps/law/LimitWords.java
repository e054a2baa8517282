package perkilo.swaps.law;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Limits and amounts as parts of a sentence. */
final class LimitWords {

    private static final int DECIMALS = 4;

    private LimitWords() {}

    static String of(LegalRule rule) {
        BigDecimal most = rule.most();
        if (rule.bound() == LegalRule.Bound.PROHIBITED) {
            return "nothing";
        }
        if (most == null) {
            return "any amount";
        }
        return switch (rule.bound()) {
            case BELOW -> "less than " + percent(most);
            case PH -> belowPh(most);
            default -> "at most " + percent(most);
        };
    }

    static String belowPh(BigDecimal ph) {
        return "below pH " + plain(ph);
    }

    /** A fraction as a percentage: {@code 2.5 %}. */
    static String percent(BigDecimal fraction) {
        return plain(fraction.movePointRight(2).setScale(DECIMALS, RoundingMode.HALF_UP)) + " %";
    }

    /** A number without trailing zeros. */
    static String plain(BigDecimal value) {
        BigDecimal shortest = value.stripTrailingZeros();
        return (shortest.scale() < 0 ? shortest.setScale(0) : shortest).toPlainString();
    }
}
