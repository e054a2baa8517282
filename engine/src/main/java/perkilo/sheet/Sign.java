package perkilo.sheet;

/**
 * The sign that a sentence carries where it asks for attention. Formats look for the sign, never for words, so that
 * words can be changed freely.
 */
public final class Sign {

    /** In front of what asks for attention. */
    public static final String ATTENTION = "\u26A0";

    /** What a spreadsheet's binary fractions leave of nothing is less than so many decimals show. */
    public static final int DIGITS = 9;

    private Sign() {}

    /**
     * A condition that holds where a cell's words carry the sign.
     *
     * @param cell such as {@code D5}
     */
    public static String isIn(String cell) {
        return "ISNUMBER(SEARCH(\"" + ATTENTION + "\"," + cell + "))";
    }
}
