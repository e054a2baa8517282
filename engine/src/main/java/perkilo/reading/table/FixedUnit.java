package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import perkilo.units.Measure;

/** Units that columns fix for their numbers, with the factors that convert other units. */
final class FixedUnit {

    private static final String ONE = "1";

    private static final Map<String, Map<String, String>> KNOWN = Map.of(
            "g/mL",
                    Map.of(
                            "g/ml", ONE, "kg/l", ONE, "g/cm3", ONE, "g/cm³", ONE, "g/cc", ONE, "kg/dm3", ONE, "kg/m3",
                            "0.001", "kg/m³", "0.001"),
            "°C", Map.of("°c", ONE, "c", ONE, "degc", ONE, "celsius", ONE),
            "hours", Map.of("h", ONE, "hr", ONE, "hrs", ONE, "hour", ONE, "hours", ONE),
            "days", Map.of("d", ONE, "day", ONE, "days", ONE, "week", "7", "weeks", "7", "wks", "7"),
            "months",
                    Map.of("m", ONE, "mo", ONE, "month", ONE, "months", ONE, "year", "12", "years", "12", "yrs", "12"),
            "%", Map.of("%", ONE, "percent", ONE, "%w/w", ONE, "w/w", ONE, "%(w/w)", ONE),
            "kg CO2e/kg",
                    Map.of("kgco2/kg", ONE, "kgco2eq/kg", ONE, "kgco2eperkg", ONE, "tco2e/t", ONE, "gco2e/kg", "0.001"),
            "mPa·s", Map.of("mpa·s", ONE, "mpas", ONE, "mpa.s", ONE, "cp", ONE, "cps", ONE));

    private FixedUnit() {}

    /**
     * What one of a unit is in a column's own unit.
     *
     * @param unit the column's, such as {@code kg} or {@code days}
     * @param words the unit that was typed instead, such as {@code lb} or {@code weeks}
     * @return empty if the words are not a unit of the same kind
     */
    static Optional<BigDecimal> factor(String unit, String words) {
        if (unit.equals("kg")) {
            return Measure.parse(words).flatMap(measure -> measure.inKg(null));
        }
        String key = key(words);
        String factor = KNOWN.getOrDefault(unit, Map.of()).get(key);
        return factor == null && key.equals(key(unit))
                ? Optional.of(BigDecimal.ONE)
                : Optional.ofNullable(factor).map(BigDecimal::new);
    }

    private static String key(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[\\s\\p{Z}]", "").replace('₂', '2');
    }
}
