package perkilo.purchasing.search.quick;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Need;

/**
 * What is wanted of one item, and what is left over of it is worth.
 *
 * @param quantity above zero, in the base unit
 * @param credit what one unit left over is worth, in home currency; zero where it counts for nothing
 * @param creditable how much of what is left over is worth that, in the base unit; zero where nothing is
 */
record Wanted(BigDecimal quantity, double credit, double creditable) {

    /** Written out, as a record's own takes its milliseconds when it is first asked. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Wanted wanted
                && quantity.equals(wanted.quantity)
                && credit == wanted.credit
                && creditable == wanted.creditable;
    }

    @Override
    public int hashCode() {
        return (quantity.hashCode() * 31 + Double.hashCode(credit)) * 31 + Double.hashCode(creditable);
    }

    /** What a need of one period wants. */
    static Wanted of(Need need) {
        return need.creditPerUnit().signum() == 0
                ? new Wanted(need.total(), 0, 0)
                : new Wanted(
                        need.total(),
                        need.creditPerUnit().doubleValue(),
                        need.creditable().doubleValue());
    }

    /**
     * What a leftover is worth.
     *
     * @param missing what is not covered yet; below zero where something is left over
     */
    double worth(double missing) {
        return missing >= 0 ? 0 : credit * Math.min(-missing, creditable);
    }
}
