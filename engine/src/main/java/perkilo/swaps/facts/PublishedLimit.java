package perkilo.swaps.facts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import perkilo.names.Names;

/**
 * The legal maximum of a substance, for substances whose limit is stated as another one, such as "as acid".
 *
 * <p>A salt of which {@code M} grams contain as much acid as {@code M_acid} grams of the acid itself may be used up to
 * {@code limit × M / M_acid}: 0.5 % as benzoic acid are 0.59 % sodium benzoate.
 *
 * @param inci the substance
 * @param limitedAs what the limit is stated as; substances with the same word share one limit
 * @param kind leave-on, rinse-off or any
 * @param max as a fraction, as {@code limitedAs}
 * @param molarMass of the substance
 * @param limitMolarMass of what the limit is stated as
 * @param source where it is published
 */
public record PublishedLimit(
        String inci,
        String limitedAs,
        String kind,
        BigDecimal max,
        BigDecimal molarMass,
        BigDecimal limitMolarMass,
        String source) {

    private static final List<PublishedLimit> ALL = FactTable.read(PublishedLimit.class, "limits.csv").stream()
            .map(PublishedLimit::parse)
            .toList();

    /**
     * The limit of a substance.
     *
     * @param inci its name in the ingredient list
     * @param rinseOff whether the product is rinsed off
     * @return empty if the table has none
     */
    public static Optional<PublishedLimit> of(String inci, boolean rinseOff) {
        String kind = rinseOff ? "rinse-off" : "leave-on";
        String key = Names.key(inci);
        return ALL.stream()
                .filter(limit -> Names.key(limit.inci).equals(key))
                .filter(limit -> limit.kind.equals("any") || limit.kind.equals(kind))
                .findFirst();
    }

    /** The amount in the unit of the limit, such as "as acid", for an amount of the substance. */
    public BigDecimal asLimited(BigDecimal substance) {
        return substance.multiply(limitMolarMass).divide(molarMass, MathContext.DECIMAL64);
    }

    /** The maximum of the substance itself, as a fraction. */
    public BigDecimal maxOfSubstance() {
        return max.multiply(molarMass).divide(limitMolarMass, MathContext.DECIMAL64);
    }

    /** Whether the limit is stated as something other than the substance. */
    public boolean isConverted() {
        return molarMass.compareTo(limitMolarMass) != 0;
    }

    private static PublishedLimit parse(List<String> row) {
        return new PublishedLimit(
                row.get(0),
                row.get(1),
                row.get(2),
                new BigDecimal(row.get(3)).movePointLeft(2),
                new BigDecimal(row.get(4)),
                new BigDecimal(row.get(5)),
                row.get(6));
    }
}
