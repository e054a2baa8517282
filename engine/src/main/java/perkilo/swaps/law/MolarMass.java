package perkilo.swaps.law;

import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Collectors;
import perkilo.swaps.facts.FactTable;

/** Molar masses of chemical formulas such as {@code C7H5NaO2}, in g/mol, by the standard atomic weights. */
final class MolarMass {

    private static final Map<String, BigDecimal> WEIGHTS =
            FactTable.read(MolarMass.class, "atomic-weights.csv").stream()
                    .collect(Collectors.toUnmodifiableMap(row -> row.get(0), row -> new BigDecimal(row.get(1))));

    private MolarMass() {}

    /**
     * The molar mass.
     *
     * @param formula elements with their numbers, without brackets
     * @throws IllegalArgumentException if it has an element that is not in the table
     */
    static BigDecimal of(String formula) {
        BigDecimal sum = BigDecimal.ZERO;
        int at = 0;
        while (at < formula.length()) {
            int end = at + 1;
            while (end < formula.length() && Character.isLowerCase(formula.charAt(end))) {
                end++;
            }
            BigDecimal weight = WEIGHTS.get(formula.substring(at, end));
            if (weight == null) {
                throw new IllegalArgumentException("no atomic weight for " + formula.substring(at, end));
            }
            int digits = end;
            while (digits < formula.length() && Character.isDigit(formula.charAt(digits))) {
                digits++;
            }
            BigDecimal times = digits == end ? BigDecimal.ONE : new BigDecimal(formula.substring(end, digits));
            sum = sum.add(weight.multiply(times));
            at = digits;
        }
        return sum;
    }
}
