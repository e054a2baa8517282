package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import perkilo.costing.RunCost;

/** What the cost of a run is divided by: its units, or the kilograms that leave the kettle if it is not filled. */
final class Measure {

    private Measure() {}

    /** Units, or kilograms. */
    static BigDecimal of(RunCost cost) {
        BigDecimal units = cost.needs().units();
        return units == null ? cost.needs().batches().output() : units;
    }

    /** The cost of one unit, or of one kilogram of bulk; in home currency. */
    static BigDecimal ofOne(RunCost cost) {
        return cost.total().divide(of(cost), MathContext.DECIMAL128);
    }
}
