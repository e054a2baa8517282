package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.Optional;
import perkilo.units.Measure;

/**
 * What a price is for, reduced to one unit.
 *
 * @param per the unit
 * @param factor the factor that makes it the price for one
 */
public record PriceBasis(Measure per, BigDecimal factor) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** The basis of a price for a number of units; empty if the price for one would be an endless decimal. */
    public static Optional<PriceBasis> of(BigDecimal count, Measure measure) {
        if (measure == Measure.G && count.compareTo(HUNDRED) == 0) {
            return Optional.of(new PriceBasis(Measure.KG, BigDecimal.TEN));
        }
        try {
            return Optional.of(new PriceBasis(measure, BigDecimal.ONE.divide(count)));
        } catch (ArithmeticException endless) {
            return Optional.empty();
        }
    }
}
