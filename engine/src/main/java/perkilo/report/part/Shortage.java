package perkilo.report.part;

import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/**
 * Says so where what is bought no longer covers what is needed, as after a change of units or packs in the result; says
 * nothing while it does. The engine's own purchase always does.
 */
public final class Shortage {

    /** Where a sheet's formulas say so, they begin with these words. */
    private static final String NOT_ENOUGH = "Not enough is ";

    /** What a spreadsheet's binary fractions leave of nothing is less. */
    private static final int DIGITS = 9;

    private Shortage() {}

    /**
     * The words where something is short.
     *
     * @param left what is left over; below zero where something is short
     * @param before what stands before them in a sentence
     * @param words what is not enough, such as {@code bought: run perkilo cost again}
     */
    public static ResultSheet.Part words(Expr left, String before, String words) {
        return new ResultSheet.Depending(left.rounded(DIGITS), before + NOT_ENOUGH + words, "");
    }

    /** Marks cells whose words say so; both corners included. */
    public static void markWords(SheetBuilder sheet, int fromRow, int column, int toRow) {
        ResultSheet.Holds said = ResultSheet.Holds.saying(SheetNames.cell(fromRow, column), NOT_ENOUGH);
        sheet.highlight(fromRow, column, toRow, column, said, Look.ERROR);
    }

    /** Marks figures that are below zero; both corners included. */
    public static void markBelowZero(SheetBuilder sheet, int fromRow, int column, int toRow) {
        String below = "ROUND(" + SheetNames.cell(fromRow, column) + "," + DIGITS + ")<0";
        sheet.highlight(fromRow, column, toRow, column, new ResultSheet.Holds(below), Look.ERROR);
    }
}
