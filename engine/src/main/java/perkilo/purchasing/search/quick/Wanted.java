package perkilo.purchasing.search.quick;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Need;

/**
 * The quantity wanted of one item, and the value of leftovers.
 *
 * @param quantity above zero, in the base unit
 * @param credit the value of one unit left over, in home currency; zero if leftovers do not count
 * @param creditable the most leftover that has this value, in the base unit; zero if none has
 */
record Wanted(BigDecimal quantity, double credit, double creditable) {

    /** Explicit: a generated equals and hashCode cost milliseconds at start-up (see engine/docs/measurements.md). */
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

    /** The wants of a need of one period. */
    static Wanted of(Need need) {
        return need.creditPerUnit().signum() == 0
                ? new Wanted(need.total(), 0, 0)
                : new Wanted(
                        need.total(),
                        need.creditPerUnit().doubleValue(),
                        need.creditable().doubleValue());
    }

    /**
     * The value of a leftover.
     *
     * @param missing the quantity not covered yet; below zero if something is left over
     */
    double worth(double missing) {
        return missing >= 0 ? 0 : credit * Math.min(-missing, creditable);
    }
}
