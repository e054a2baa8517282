package perkilo.report.part;

import perkilo.sheet.Expr;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.Sign;

/**
 * Says so where what is bought no longer covers what is needed, as after a change of units or packs in the result; says
 * nothing while it does. The engine's own purchase always does.
 */
public final class Shortage {

    private Shortage() {}

    /**
     * The words where something is short, behind the sign that asks for attention.
     *
     * @param left what is left over; below zero where something is short
     * @param before what comes before them in a sentence
     * @param words such as {@code The purchase no longer covers this.}
     */
    public static ResultSheet.Part words(Expr left, String before, String words) {
        return new ResultSheet.Depending(left.rounded(Sign.DIGITS), before + Sign.ATTENTION + " " + words, "");
    }
}
