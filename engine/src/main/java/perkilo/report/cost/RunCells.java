package perkilo.report.cost;

import java.util.List;
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
 * @param making the cells of what is made
 * @param items the cells of the items' costs
 * @param bulk the cost of a kilogram
 * @param unit the cost of a unit; null for bulk that is not filled
 * @param cash payments for items, and what is left
 * @param heads by head, for the whole run
 * @param row the block's first row on the detail sheet, from zero
 */
record RunCells(
        RunCost cost,
        MakingPart making,
        ItemsPart items,
        PerKg bulk,
        @Nullable PerUnit unit,
        Cash cash,
        Map<Head, Expr> heads,
        int row) {

    /**
     * The cost of a kilogram.
     *
     * @param rawMaterial of the recipe
     * @param made of bulk that leaves the kettle
     */
    record PerKg(Expr rawMaterial, Expr made) {}

    /**
     * The cost of a unit.
     *
     * @param cost by all heads
     * @param cash all payments
     * @param oneOffs its share of the one-off costs, which is part of its cost
     */
    record PerUnit(Expr cost, Expr cash, Expr oneOffs) {}

    /**
     * Payments for items, and what is left.
     *
     * @param outlay all payments for items
     * @param stockLeft cost of what is left and can be used
     * @param wasted cost of what is left and will expire
     */
    record Cash(Expr outlay, Expr stockLeft, Expr wasted) {}

    /** The cost of the run. */
    Expr total() {
        return Expr.sum(List.copyOf(heads.values()));
    }

    /** The cost of a unit; null for bulk that is not filled. */
    @Nullable Expr unitCost() {
        return unit == null ? null : unit.cost();
    }

    /** Payments for a unit; null for bulk that is not filled. */
    @Nullable Expr cashPerUnit() {
        return unit == null ? null : unit.cash();
    }

    /** The least that is left over of any item: below zero if not enough is bought. */
    Expr lowestLeft() {
        return items.lowestLeft();
    }

    /** The need of an item. */
    Expr needed(ItemCost item) {
        return items.table().ref(item, items.columns().needed);
    }

    /** The block's first cell. */
    Origin title() {
        return new Origin("", DetailSheet.NAME, SheetNames.cell(row, SheetBuilder.FIRST_COLUMN));
    }
}
