package perkilo.units;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * A unit that goods are packed, priced, filled or counted in.
 *
 * <p>The factors are those of JSR 385's reference implementation, exact by definition: 1 lb = 0.45359237 kg, 1 US gal =
 * 3.785411784 L (NIST Special Publication 811, Appendix B).
 */
public enum Measure {
    KG("kg", Kind.MASS),
    G("g", Kind.MASS),
    LB("lb", Kind.MASS),
    OZ("oz", Kind.MASS),
    L("L", Kind.VOLUME),
    ML("mL", Kind.VOLUME),
    US_GAL("US gal", Kind.VOLUME),
    US_FL_OZ("US fl oz", Kind.VOLUME),
    EACH("each", Kind.COUNT);

    /** What a unit measures. */
    public enum Kind {
        MASS,
        VOLUME,
        COUNT
    }

    private static final Pattern SPACES_AND_DOTS = Pattern.compile("[\\s\\p{Z}.]+");
    private static final Map<String, Measure> BY_WORD = words();
    private static final BigDecimal THOUSANDTH = new BigDecimal("0.001");
    private static final Map<Measure, BigDecimal> IN_BASE = new ConcurrentHashMap<>();

    private final String symbol;
    private final Kind kind;

    Measure(String symbol, Kind kind) {
        this.symbol = symbol;
        this.kind = kind;
    }

    /**
     * The unit that a word stands for.
     *
     * @param word such as {@code kg}, {@code Kilo}, {@code lbs}, {@code US gal}, {@code pcs}; case, spaces and full
     *     stops don't matter
     * @return empty if no unit is called so
     */
    public static Optional<Measure> parse(String word) {
        Measure plain = BY_WORD.get(word);
        return Optional.ofNullable(plain != null ? plain : BY_WORD.get(squeeze(word)));
    }

    /** The unit's symbol as it is written beside a number. */
    public String symbol() {
        return symbol;
    }

    /** What the unit measures. */
    public Kind kind() {
        return kind;
    }

    /** The unit as JSR 385 knows it. */
    public Unit<?> unit() {
        return switch (this) {
            case KG -> Units.KILOGRAM;
            case G -> Units.GRAM;
            case LB -> USCustomary.POUND;
            case OZ -> USCustomary.OUNCE;
            case L -> Units.LITRE;
            case ML -> MetricPrefix.MILLI(Units.LITRE);
            case US_GAL -> USCustomary.GALLON_LIQUID;
            case US_FL_OZ -> USCustomary.FLUID_OUNCE;
            case EACH -> AbstractUnit.ONE;
        };
    }

    /** One of this unit in its kind's base: kilograms for mass, litres for volume, pieces for a count. Exact. */
    public BigDecimal inBase() {
        return switch (this) {
            case KG, L, EACH -> BigDecimal.ONE;
            case G, ML -> THOUSANDTH;
            case LB, OZ, US_GAL, US_FL_OZ -> IN_BASE.computeIfAbsent(this, Measure::convertOne);
        };
    }

    /**
     * One of this unit in kilograms.
     *
     * @param density in g/mL, which is kg/L; needed for a volume
     * @return empty for a volume without a density, and for a count
     */
    public Optional<BigDecimal> inKg(@Nullable BigDecimal density) {
        return switch (kind) {
            case MASS -> Optional.of(inBase());
            case VOLUME -> Optional.ofNullable(density).map(inBase()::multiply);
            case COUNT -> Optional.empty();
        };
    }

    private BigDecimal convertOne() {
        UnitConverter toBase = kind == Kind.MASS
                ? unit().asType(Mass.class).getConverterTo(Units.KILOGRAM)
                : unit().asType(Volume.class).getConverterTo(Units.LITRE);
        return new BigDecimal(toBase.convert(BigDecimal.ONE).toString()).stripTrailingZeros();
    }

    private static Map<String, Measure> words() {
        Map<String, Measure> words = new HashMap<>();
        put(words, KG, "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes");
        put(words, G, "g", "gr", "gram", "grams", "gramme", "grammes", "gm", "gms");
        put(words, LB, "lb", "lbs", "pound", "pounds", "lb avdp");
        put(words, OZ, "oz", "ozs", "ounce", "ounces", "oz avdp");
        put(words, L, "l", "lt", "ltr", "ltrs", "litre", "litres", "liter", "liters");
        put(words, ML, "ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc");
        put(words, US_GAL, "us gal", "gal", "gals", "gallon", "gallons", "us gallon", "us gallons", "gal us", "usg");
        put(words, US_FL_OZ, "us fl oz", "fl oz", "floz", "fluid ounce", "fluid ounces");
        put(
                words, EACH, "each", "ea", "pc", "pcs", "piece", "pieces", "unit", "units", "pce", "st", "stk", "stück",
                "no", "count");
        return words;
    }

    private static void put(Map<String, Measure> words, Measure measure, String... spellings) {
        for (String spelling : spellings) {
            words.put(squeeze(spelling), measure);
        }
    }

    private static String squeeze(String word) {
        return SPACES_AND_DOTS.matcher(word.toLowerCase(Locale.ROOT)).replaceAll("");
    }
}
