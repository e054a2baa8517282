package perkilo.report.cost;

import org.jspecify.annotations.Nullable;
import perkilo.costing.RunAnswer;
import perkilo.origin.Origin;
import perkilo.report.part.MakingPart;
import perkilo.sheet.Expr;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/**
 * The cells of the block of a run that is not complete.
 *
 * @param answer what is known and what is missing
 * @param making the cells of what is made; null if nothing of the run is known
 * @param knownSoFar the cost of the known part; null if nothing is known
 * @param rawMaterialPerKg null if it is not known
 * @param bulkPerKg null if it is not known
 * @param row the block's first row on the detail sheet, from zero; below zero if it has none
 */
record PartCells(
        RunAnswer answer,
        @Nullable MakingPart making,
        @Nullable Expr knownSoFar,
        @Nullable Expr rawMaterialPerKg,
        @Nullable Expr bulkPerKg,
        int row) {

    /** A run of which nothing is known. */
    static PartCells nothing(RunAnswer answer) {
        return new PartCells(answer, null, null, null, null, -1);
    }

    /** The block's first cell, or the cell that asks for the run if it has no block. */
    Origin title() {
        return row < 0
                ? answer.origin()
                : new Origin("", DetailSheet.NAME, SheetNames.cell(row, SheetBuilder.FIRST_COLUMN));
    }
}
