package perkilo.sheet;

/**
 * The sign at the beginning of a sentence that needs attention. Conditional formats look for the sign, never for words,
 * so that words can be changed freely.
 */
public final class Sign {

    /** The sign itself. */
    public static final String ATTENTION = "\u26A0";

    /** Decimals to round to, so that the error of binary fractions disappears. */
    public static final int DIGITS = 9;

    private Sign() {}

    /**
     * A condition that is true if a cell's words carry the sign.
     *
     * @param cell such as {@code D5}
     */
    public static String isIn(String cell) {
        return "ISNUMBER(SEARCH(\"" + ATTENTION + "\"," + cell + "))";
    }
}
