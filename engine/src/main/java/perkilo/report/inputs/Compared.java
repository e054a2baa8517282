package perkilo.report.inputs;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.SeenTable;
import perkilo.report.inputs.Effects.Effect;

/**
 * One column of an input table, as it is compared.
 *
 * @param table the table
 * @param part the column; null for the extent of the table
 * @param effect what it changes
 * @param numbersFollow whether the figures follow a number in the place of a number
 * @param blanksFollow whether they follow a number in the place of words or nothing
 */
record Compared(
        SeenTable table, SeenTable.@Nullable Part part, Effect effect, boolean numbersFollow, boolean blanksFollow) {

    /** A column, with what the formulas of the result sheets follow of it. */
    static Compared of(SeenTable table, SeenTable.Part part, Effects effects, Referenced referenced) {
        Effect effect = effects.of(table.kind(), part.name());
        boolean numbers = true;
        boolean blanks = true;
        for (int row = part.firstRow(); row <= part.lastRow(); row++) {
            if (referenced.has(table.sheet(), row, part.column())) {
                continue;
            }
            boolean number = isNumber(part, row);
            boolean used = isUsed(table, row, referenced);
            numbers &= !(used && number);
            blanks &= number || !(used || isWords(part, row));
        }
        boolean due = effect == Effect.WHERE_DUE;
        return new Compared(table, part, effect, numbers || due || effect == Effect.WHERE_USED, blanks || due);
    }

    /** Whether a formula refers to any cell of a row. */
    private static boolean isUsed(SeenTable table, int row, Referenced referenced) {
        if (table.kind().equals("Settings")) {
            return true;
        }
        for (SeenTable.Part part : table.parts()) {
            if (referenced.has(table.sheet(), row, part.column())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNumber(SeenTable.Part part, int row) {
        List<Object> cells = part.cells();
        return cells == null || !(cells.get(row - part.firstRow()) instanceof String);
    }

    private static boolean isWords(SeenTable.Part part, int row) {
        List<Object> cells = part.cells();
        return cells != null && cells.get(row - part.firstRow()) instanceof String words && !words.isEmpty();
    }

    /** Whether a change of a number counts as one that the figures do not follow. */
    boolean isSaid() {
        return part == null || (effect != Effect.CHOICE && !numbersFollow);
    }

    /** Whether the choice of purchase depends on it. */
    boolean isChoice() {
        return part != null && !isSaid() && effect != Effect.FIGURES;
    }
}
