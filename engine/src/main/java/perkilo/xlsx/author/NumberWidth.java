package perkilo.xlsx.author;

import java.math.BigDecimal;
import java.math.RoundingMode;
import perkilo.sheet.NumberFormat;

/**
 * The width of a number in a format. Widths are counted in quarters of a digit's width and rounded up, because fonts
 * differ.
 *
 * @param decimals digits after the point in the cell's own number: two more than shown for per cent
 * @param shown digits after the point as shown
 * @param grouped whether thousands are separated
 * @param around the words beside the number, such as a currency
 * @param numeric false for days and for a format that adapts to its column: counting their digits would be wrong
 */
record NumberWidth(int decimals, int shown, boolean grouped, int around, boolean numeric) {

    private static final int DIGIT = 4;
    private static final int SEPARATOR = 2;
    private static final int SIGN = 3;
    private static final int LETTER = 5;
    private static final int PER_CENT = 7;
    private static final int GROUP = 3;

    /** Reads a format's first section, which is for numbers above zero. */
    static NumberWidth of(NumberFormat format) {
        String code = format.code();
        int around = 0;
        int shown = -1;
        boolean grouped = false;
        boolean numeric = false;
        boolean quoted = false;
        int perCent = 0;
        for (int at = 0; at < code.length() && (quoted || code.charAt(at) != ';'); at++) {
            char sign = code.charAt(at);
            if (sign == '"') {
                quoted = !quoted;
            } else if (quoted) {
                around += LETTER;
            } else if (sign == '\\') {
                at++;
                around += code.charAt(at) == '-' ? SIGN : SEPARATOR;
            } else if (sign == '0' || sign == '#') {
                numeric = true;
                shown += shown < 0 ? 0 : 1;
            } else if (sign == '.') {
                shown = 0;
            } else if (sign == ',') {
                grouped = true;
            } else if (sign == '%') {
                around += PER_CENT;
                perCent = 2;
            } else if (sign == 'y' || sign == 'm' || sign == 'd') {
                around += DIGIT;
            }
        }
        int decimals = Math.max(0, shown);
        return new NumberWidth(decimals + perCent, decimals, grouped, around, numeric);
    }

    /** The number rounded as it is shown: with two decimals, 999.996 has four digits before the point. */
    BigDecimal rounded(BigDecimal value) {
        return value.setScale(decimals, RoundingMode.HALF_UP);
    }

    /** Digits before the point. */
    static int digits(BigDecimal value) {
        return value.precision() - value.scale();
    }

    /**
     * The characters that a column must hold.
     *
     * @param digits before the point in the cell's own number
     * @param bold whether it is written in bold
     */
    int characters(int digits, boolean negative, boolean bold) {
        int width = around;
        if (numeric) {
            int before = Math.max(1, digits + decimals - shown);
            width += before * DIGIT;
            width += grouped ? (before - 1) / GROUP * SEPARATOR : 0;
            width += shown > 0 ? SEPARATOR + shown * DIGIT : 0;
            width += negative ? SIGN : 0;
        }
        return (int) Math.ceil((double) width / DIGIT * (bold ? TextFit.BOLD_WIDTH : 1));
    }
}
