package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.Optional;
import perkilo.units.Measure;

/**
 * What a price is for, as the price of one of a unit.
 *
 * @param per the unit
 * @param factor what the price is multiplied by, to be that for one
 */
public record PriceBasis(Measure per, BigDecimal factor) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** That of a price for so many of a unit; empty where the price for one would be an endless decimal. */
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
