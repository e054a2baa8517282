package perkilo.report.cost;

import perkilo.costing.ItemCost;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.report.part.Lines;
import perkilo.report.part.MakingPart;
import perkilo.sheet.Expr;
import perkilo.sheet.table.Placed;

/**
 * The part of a run's block with the cost of each item, and the cells that the rest of the block uses.
 *
 * @param columns the table's columns
 * @param table the table with its cells
 * @param rawMaterials goods of materials used
 * @param packaging goods of components used
 * @param materialsUsed materials used, landed
 * @param rawMaterialPerKg cost of the recipe for one kilogram
 */
record ItemsPart(
        ItemTable columns,
        Placed<ItemCost> table,
        Expr rawMaterials,
        Expr packaging,
        Expr materialsUsed,
        Expr rawMaterialPerKg) {

    static ItemsPart write(Lines lines, RunAnswer answer, RunCost cost, MakingPart making, PurchasePart purchase) {
        lines.section("Materials and components");
        ItemTable all = new ItemTable(cost, making, purchase);
        ItemTable columns = answer.isComplete() ? all : all.knownSoFar();
        Placed<ItemCost> table = lines.write(lines.place(columns.onSheet(), cost.items()));
        int materials = 0;
        for (ItemCost item : cost.items()) {
            materials += item.item().isMaterial() ? 1 : 0;
        }
        return new ItemsPart(
                columns,
                table,
                table.sum(columns.goods, 0, materials - 1),
                table.sum(columns.goods, materials, cost.items().size() - 1),
                table.sum(columns.used, 0, materials - 1),
                columns.recipe(table));
    }

    /** Everything used, landed. */
    Expr used() {
        return table.total(columns.used);
    }

    /** Wasted, landed. */
    Expr wasted() {
        return table.total(columns.wasted);
    }

    /** Everything paid for. */
    Expr outlay() {
        return table.total(columns.paid);
    }

    /** The least that is left over of any item: below zero if not enough is bought. */
    Expr lowestLeft() {
        return table.lowest(columns.left);
    }
}
