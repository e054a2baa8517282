package perkilo.report.cost;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Head;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.origin.Origin;
import perkilo.report.part.MakingPart;
import perkilo.sheet.Expr;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/**
 * The cells of a run's block on the detail sheet that other sheets refer to. Amounts are in home currency.
 *
 * @param cost the run
 * @param making what is made
 * @param items what each item costs
 * @param rawMaterialPerKg cost of the recipe for one kilogram
 * @param bulkPerKg cost of one kilogram of bulk
 * @param total everything that the run costs
 * @param unitCost cost of one unit; null for bulk that is not filled
 * @param cashPerUnit cash for one unit; null for bulk that is not filled
 * @param outlay everything paid for items
 * @param stockLeft what is left of it and can be used
 * @param lowestLeft the least that is left over of any item: below zero where not enough is bought
 * @param wasted what is left of it and will expire
 * @param oneOffPerUnit one-off costs in the unit cost; null for bulk that is not filled
 * @param heads by head, for the whole run
 * @param row the block's first row on the detail sheet, from zero
 */
record RunCells(
        RunCost cost,
        MakingPart making,
        ItemsPart items,
        Expr rawMaterialPerKg,
        Expr bulkPerKg,
        Expr total,
        @Nullable Expr unitCost,
        @Nullable Expr cashPerUnit,
        Expr outlay,
        Expr stockLeft,
        Expr lowestLeft,
        Expr wasted,
        @Nullable Expr oneOffPerUnit,
        Map<Head, Expr> heads,
        int row) {

    /** How much of an item is needed. */
    Expr needed(ItemCost item) {
        return items.table().ref(item, items.columns().needed);
    }

    /** The block's first cell. */
    Origin title() {
        return new Origin("", DetailSheet.NAME, SheetNames.cell(row, SheetBuilder.FIRST_COLUMN));
    }
}
