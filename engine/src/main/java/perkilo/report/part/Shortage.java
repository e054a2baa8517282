package perkilo.report.part;

import perkilo.sheet.Expr;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.Sign;

/**
 * Words that appear if the purchase no longer covers the need, such as after a change of units or packs in the result.
 * The engine's own purchase always covers it.
 */
public final class Shortage {

    private Shortage() {}

    /**
     * The words, after the sign for attention; empty if nothing is missing.
     *
     * @param left what is left over; below zero if something is missing
     * @param before text before them
     * @param words such as {@code The purchase no longer covers this.}
     */
    public static ResultSheet.Part words(Expr left, String before, String words) {
        return new ResultSheet.Depending(left.rounded(Sign.DIGITS), before + Sign.ATTENTION + " " + words, "");
    }
}
