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
 * @param making what is made
 * @param items what each item costs
 * @param bulk what a kilogram costs
 * @param unit what a unit costs; null for bulk that is not filled
 * @param cash what is paid for items, and what remains of it
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
     * What a kilogram costs.
     *
     * @param rawMaterial of the recipe
     * @param made of bulk that leaves the kettle
     */
    record PerKg(Expr rawMaterial, Expr made) {}

    /**
     * What a unit costs.
     *
     * @param cost by all heads
     * @param cash everything that is paid
     * @param oneOffs its share of the one-off costs, which is part of its cost
     */
    record PerUnit(Expr cost, Expr cash, Expr oneOffs) {}

    /**
     * What is paid for items, and what remains of it.
     *
     * @param outlay everything that is paid for items
     * @param stockLeft what is left of it and can be used
     * @param wasted what is left of it and will expire
     */
    record Cash(Expr outlay, Expr stockLeft, Expr wasted) {}

    /** Everything that the run costs. */
    Expr total() {
        return Expr.sum(List.copyOf(heads.values()));
    }

    /** What a unit costs; null for bulk that is not filled. */
    @Nullable Expr unitCost() {
        return unit == null ? null : unit.cost();
    }

    /** What is paid for a unit; null for bulk that is not filled. */
    @Nullable Expr cashPerUnit() {
        return unit == null ? null : unit.cash();
    }

    /** The least that is left over of any item: below zero where not enough is bought. */
    Expr lowestLeft() {
        return items.lowestLeft();
    }

    /** How much of an item is needed. */
    Expr needed(ItemCost item) {
        return items.table().ref(item, items.columns().needed);
    }

    /** The block's first cell. */
    Origin title() {
        return new Origin("", DetailSheet.NAME, SheetNames.cell(row, SheetBuilder.FIRST_COLUMN));
    }
}
