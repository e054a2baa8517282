package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.model.Product;
import perkilo.origin.Figure;

/**
 * What a unit may cost at the shop price and the margin that are wanted, and what would bring it there. Amounts are in
 * home currency.
 *
 * @param cost the run as it is
 * @param targetRetail the shop price, with VAT
 * @param allowed {@code W × (1 − target margin)}, with the wholesale price W that the shop price leaves
 * @param candidates what brings the cost down alone, the greatest effect first
 * @param chosen the set of at most three that takes the least cash of those that reach the allowed cost; the set that
 *     brings the cost down most if none reaches it; none if it is reached today
 * @param after the run with the whole set, planned anew; the run as it is for no set
 * @param sets how many sets of two or three were planned
 */
public record TargetCost(
        RunCost cost,
        Figure targetRetail,
        BigDecimal allowed,
        List<TargetMove> candidates,
        List<TargetMove> chosen,
        RunCost after,
        Sets sets) {

    /**
     * How many sets of two or three changes were planned as a whole.
     *
     * @param planned so many
     * @param possible at most so many go together
     */
    public record Sets(int planned, int possible) {

        /** Nothing had to be found. */
        static final Sets NONE = new Sets(0, 0);

        /** Whether some were left out, the least promising ones. */
        public boolean isCut() {
            return planned < possible;
        }
    }

    public TargetCost {
        candidates = List.copyOf(candidates);
        chosen = List.copyOf(chosen);
    }

    /** The allowed cost of a unit; null if the product lacks the target retail price or the target margin. */
    static @Nullable BigDecimal allowed(Product product) {
        Figure retail = product.targetRetailPrice();
        Figure margin = product.targetMargin();
        if (retail == null || margin == null) {
            return null;
        }
        BigDecimal one = BigDecimal.ONE;
        return retail.value()
                .divide(one.add(product.vat().value()), MathContext.DECIMAL128)
                .multiply(one.subtract(product.retailerMargin().value()))
                .multiply(one.subtract(product.distributorMargin().value()))
                .multiply(one.subtract(margin.value()));
    }

    /** The cost of a unit as it is. */
    public BigDecimal unitCost() {
        return Measure.ofOne(cost);
    }

    /** By how much a unit costs more than it may; below zero if it costs less. */
    public BigDecimal gap() {
        return unitCost().subtract(allowed);
    }

    /** The cost of a unit with the whole set. */
    public BigDecimal unitCostAfter() {
        return Measure.ofOne(after);
    }

    /** Whether the allowed cost is reached today. */
    public boolean isMet() {
        return gap().signum() <= 0;
    }

    /** Whether the allowed cost is reached with the set. */
    public boolean isReached() {
        return unitCostAfter().compareTo(allowed) <= 0;
    }

    /**
     * What a kilogram of the recipe's materials may cost with everything else as it is; null if even free materials
     * would not be enough, or if the run has none that cost anything.
     */
    public @Nullable BigDecimal allowedRawMaterialPerKg() {
        BigDecimal materials = BigDecimal.ZERO;
        for (ItemCost item : cost.items()) {
            if (item.item().isMaterial()) {
                materials = materials.add(item.used()).add(item.wasted());
            }
        }
        BigDecimal left = materials.subtract(gap().multiply(Measure.of(cost)));
        return materials.signum() == 0 || left.signum() < 0
                ? null
                : cost.rawMaterialPerKg().multiply(left).divide(materials, MathContext.DECIMAL128);
    }
}
