package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import perkilo.costing.RunCost;

/**
 * A run size from which a unit really costs less than at every smaller size.
 *
 * @param before the run of one unit less
 * @param at the run of that size
 */
public record SizeStep(RunCost before, RunCost at) {

    /** The fall of the unit cost from one size to the next, as a fraction. */
    public BigDecimal fall() {
        BigDecimal cost = Measure.ofOne(before);
        return cost.subtract(Measure.ofOne(at)).divide(cost, MathContext.DECIMAL128);
    }
}
