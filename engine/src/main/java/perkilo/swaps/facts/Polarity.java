package perkilo.swaps.facts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;

/**
 * The polarity of an oil, by two published scales that do not always agree.
 *
 * @param interfacialTension against water, in mN/m; the higher, the less polar; null where not published
 * @param solubilityParameter the higher, the more polar; null where not published
 * @param source of both
 */
public record Polarity(
        @Nullable Double interfacialTension, @Nullable Double solubilityParameter, String source) {

    /**
     * Oils that differ by this much in interfacial tension count as far apart; more makes no difference. Own choice.
     */
    private static final double FAR_TENSION = 20;

    /** The same in the solubility parameter. Own choice. */
    private static final double FAR_PARAMETER = 1.5;

    private static final Map<String, Polarity> BY_INCI = FactTable.read(Polarity.class, "polarity.csv").stream()
            .collect(Collectors.toUnmodifiableMap(row -> Names.key(row.get(0)), Polarity::parse));

    /** The polarity of an oil by its name in the ingredient list; empty if none is published. */
    public static Optional<Polarity> of(String inci) {
        return Optional.ofNullable(BY_INCI.get(Names.key(inci)));
    }

    /** The distance to another, 0 to 1, by the scale on which the two differ more; empty without a common scale. */
    public OptionalDouble distance(Polarity other) {
        return Stream.of(
                        apart(other, Polarity::interfacialTension, FAR_TENSION),
                        apart(other, Polarity::solubilityParameter, FAR_PARAMETER))
                .flatMapToDouble(OptionalDouble::stream)
                .max();
    }

    /** The polarity in one of the words of the Materials sheet; empty without a published interfacial tension. */
    public Optional<String> word() {
        Double tension = interfacialTension;
        return tension == null
                ? Optional.empty()
                : Optional.of(tension > 35 ? "nonpolar" : tension > 20 ? "medium" : "polar");
    }

    /** The polarity in words; the borders lie between oils that the trade calls by these words. Own choice. */
    public String words() {
        Double tension = interfacialTension;
        if (tension == null) {
            return "solubility parameter %s".formatted(solubilityParameter);
        }
        String word = tension > 35 ? "non-polar" : tension > 20 ? "medium polar" : "polar";
        return "%s (%s mN/m)".formatted(word, tension);
    }

    private OptionalDouble apart(Polarity other, Function<Polarity, @Nullable Double> scale, double far) {
        Double mine = scale.apply(this);
        Double theirs = scale.apply(other);
        return mine == null || theirs == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.min(1, Math.abs(mine - theirs) / far));
    }

    private static Polarity parse(List<String> row) {
        return new Polarity(number(row.get(1)), number(row.get(2)), row.get(3));
    }

    private static @Nullable Double number(String text) {
        return text.isEmpty() ? null : Double.valueOf(text);
    }
}
