package perkilo.origin;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Decimals as text. */
public final class Decimals {

    private static final MathContext SPREADSHEET = new MathContext(17, RoundingMode.HALF_UP);

    private Decimals() {}

    /** A number as a spreadsheet keeps it: plain, to at most 17 significant digits, without trailing zeros. */
    public static String plain(BigDecimal value) {
        BigDecimal short0 = value.round(SPREADSHEET).stripTrailingZeros();
        return (short0.scale() < 0 ? short0.setScale(0) : short0).toPlainString();
    }

    /**
     * A number for a person: at most a number of decimals, rounded half up, without trailing zeros, with commas between
     * thousands.
     */
    public static String readable(BigDecimal value, int decimals) {
        BigDecimal rounded = value.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return grouped(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
    }

    /** An amount for a person: an exact number of decimals, rounded half up, with commas between thousands. */
    public static String amount(BigDecimal value, int decimals) {
        return grouped(value.setScale(decimals, RoundingMode.HALF_UP));
    }

    private static String grouped(BigDecimal value) {
        String plain = value.abs().toPlainString();
        int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        StringBuilder grouped = new StringBuilder(plain);
        for (int at = point - 3; at > 0; at -= 3) {
            grouped.insert(at, ',');
        }
        return (value.signum() < 0 ? "-" : "") + grouped;
    }
}
