package perkilo.swaps.money;

import java.math.BigDecimal;
import java.util.Optional;
import perkilo.costing.RunCost;

/**
 * The costs of a run with the present formula and with the changed one, each with its own full purchase plan.
 *
 * @param key that identifies the run among those of the formula: its units, or the kilograms of bulk
 * @param before the run as it is
 * @param after the run with the changed formula
 */
public record RunChange(String key, RunCost before, RunCost after) {

    /** Change of the raw material cost per kilogram of the recipe, in home currency; below zero is a saving. */
    public BigDecimal perKg() {
        return after.rawMaterialPerKg().subtract(before.rawMaterialPerKg());
    }

    /** Change of the cost of one unit, in home currency; empty for bulk that is not filled. */
    public Optional<BigDecimal> unitCost() {
        return after.unitCost().flatMap(now -> before.unitCost().map(now::subtract));
    }

    /** Change of everything paid for items, in home currency. */
    public BigDecimal outlay() {
        return after.outlay().subtract(before.outlay());
    }

    /** Change of what the whole run costs, in home currency. */
    public BigDecimal total() {
        return after.total().subtract(before.total());
    }

    /** Whether a unit, or the bulk, costs less. */
    public boolean isCheaper() {
        return total().signum() < 0;
    }

    /**
     * Whether the run costs less, or takes less cash, by at least a part of what its raw materials cost now.
     *
     * @param least as a fraction of the raw material cost of the run
     */
    public boolean savesAtLeast(BigDecimal least) {
        BigDecimal rawMaterials = before.rawMaterialPerKg()
                .multiply(before.needs().batches().charged())
                .max(BigDecimal.ZERO);
        BigDecimal worth = rawMaterials.multiply(least).negate();
        return (isCheaper() && total().compareTo(worth) <= 0) || (takesLessCash() && outlay().compareTo(worth) <= 0);
    }

    /** Whether less cash leaves the bank. */
    public boolean takesLessCash() {
        return outlay().signum() < 0;
    }
}
