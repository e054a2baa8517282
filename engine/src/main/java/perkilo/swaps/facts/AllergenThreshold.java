package perkilo.swaps.facts;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** The share of a product above which a fragrance allergen has to be named: 0.001 % leave-on, 0.01 % rinse-off. */
public final class AllergenThreshold {

    private static final Map<String, BigDecimal> BY_KIND =
            FactTable.read(AllergenThreshold.class, "allergen-thresholds.csv").stream()
                    .collect(Collectors.toUnmodifiableMap(
                            row -> row.get(0), row -> new BigDecimal(row.get(1)).movePointLeft(2)));

    private AllergenThreshold() {}

    /** The threshold as a fraction; an allergen is named if the product contains more. */
    public static BigDecimal of(boolean rinseOff) {
        return Objects.requireNonNull(BY_KIND.get(rinseOff ? "rinse-off" : "leave-on"));
    }
}
