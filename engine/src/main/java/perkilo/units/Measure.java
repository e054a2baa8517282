package perkilo.units;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * A unit that goods are packed, priced, filled or counted in.
 *
 * <p>A unit is one constant: its symbol, what it measures, what one of it is in kilograms, litres or pieces, and the
 * words that people write for it. Nothing else names a unit; what treats pieces in another way than kilograms asks for
 * the {@link #kind}. {@code EveryMeasureTest} takes each constant through a workbook and its result.
 *
 * <p>The factors are exact by definition: 1 lb = 0.45359237 kg, 16 oz = 1 lb, 1 US gal = 3.785411784 L, 128 US fl oz =
 * 1 US gal, 1 imp gal = 4.54609 L (NIST Special Publication 811, Appendix B; Handbook 44, Appendix C). A gross is
 * twelve dozen.
 */
public enum Measure {
    KG("kg", Kind.MASS, "1", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"),
    G("g", Kind.MASS, "0.001", "gr", "gram", "grams", "gramme", "grammes", "gm", "gms"),
    LB("lb", Kind.MASS, "0.45359237", "lbs", "pound", "pounds", "lb avdp"),
    OZ("oz", Kind.MASS, "0.028349523125", "ozs", "ounce", "ounces", "oz avdp"),
    L("L", Kind.VOLUME, "1", "lt", "ltr", "ltrs", "litre", "litres", "liter", "liters"),
    ML("mL", Kind.VOLUME, "0.001", "millilitre", "millilitres", "milliliter", "milliliters", "cc"),
    US_GAL(
            "US gal",
            Kind.VOLUME,
            "3.785411784",
            "gal",
            "gals",
            "gallon",
            "gallons",
            "us gallon",
            "us gallons",
            "gal us",
            "gals us",
            "gallon us",
            "gallons us",
            "us gals",
            "us liquid gallon",
            "us liquid gallons",
            "usg"),
    IMP_GAL(
            "imp gal",
            Kind.VOLUME,
            "4.54609",
            "imp gals",
            "imp gallon",
            "imp gallons",
            "imperial gal",
            "imperial gals",
            "imperial gallon",
            "imperial gallons",
            "uk gal",
            "uk gals",
            "uk gallon",
            "uk gallons",
            "gal imp",
            "gals imp",
            "gallon imp",
            "gallons imp",
            "gal imperial",
            "gals imperial",
            "gallon imperial",
            "gallons imperial",
            "gal uk",
            "gals uk",
            "gallon uk",
            "gallons uk"),
    US_FL_OZ("US fl oz", Kind.VOLUME, "0.0295735295625", "fl oz", "floz", "fluid ounce", "fluid ounces"),
    EACH(
            "each",
            Kind.COUNT,
            "1",
            "ea",
            "pc",
            "pcs",
            "piece",
            "pieces",
            "unit",
            "units",
            "pce",
            "st",
            "stk",
            "stück",
            "no",
            "count"),
    GROSS("gross", Kind.COUNT, "144", "grosses", "gros");

    /** What a unit measures. */
    public enum Kind {
        MASS,
        VOLUME,
        COUNT
    }

    private static final Pattern LEFT_OUT = Pattern.compile("[\\s\\p{Z}.()]+");
    private static final Set<String> BARE_GALLONS = Set.of("gal", "gals", "gallon", "gallons");
    private static final Map<String, Measure> BY_WORD = byWord();

    private final String symbol;
    private final Kind kind;
    private final BigDecimal inBase;

    @SuppressWarnings("ImmutableEnumChecker") // List.of
    private final List<String> words;

    /**
     * A unit.
     *
     * @param symbol as it is written beside a number; also read
     * @param inBase kilograms, litres or pieces in one of it
     * @param words other spellings; case, spaces, full stops and brackets don't matter
     */
    Measure(String symbol, Kind kind, String inBase, String... words) {
        this.symbol = symbol;
        this.kind = kind;
        this.inBase = new BigDecimal(inBase);
        this.words = List.of(words);
    }

    /**
     * The unit that a word stands for.
     *
     * @param word such as {@code kg}, {@code Kilo}, {@code lbs}, {@code US gal}, {@code pcs}; case, spaces, full stops
     *     and brackets don't matter. A {@linkplain #isBareGallon bare gallon} is taken for a US gallon
     * @return empty if no unit is called so
     */
    public static Optional<Measure> parse(String word) {
        Measure plain = BY_WORD.get(word);
        return Optional.ofNullable(plain != null ? plain : BY_WORD.get(squeeze(word)));
    }

    /** Whether a word says gallon, but not whose: a US gallon and an imperial one differ by a fifth. */
    public static boolean isBareGallon(String word) {
        return BARE_GALLONS.contains(word) || BARE_GALLONS.contains(squeeze(word));
    }

    /** The unit's symbol as it is written beside a number. */
    public String symbol() {
        return symbol;
    }

    /** What the unit measures. */
    public Kind kind() {
        return kind;
    }

    /** Whether it counts pieces, one by one or several at a time. */
    public boolean isCount() {
        return kind == Kind.COUNT;
    }

    /** Whether one of it is one kilogram, litre or piece. */
    public boolean isBase() {
        return inBase.compareTo(BigDecimal.ONE) == 0;
    }

    /** The unit as JSR 385 knows it. */
    public Unit<?> unit() {
        Unit<?> base = switch (kind) {
            case MASS -> Units.KILOGRAM;
            case VOLUME -> Units.LITRE;
            case COUNT -> AbstractUnit.ONE;
        };
        return isBase() ? base : base.multiply(inBase);
    }

    /** One of this unit in its kind's base: kilograms for mass, litres for volume, pieces for a count. Exact. */
    public BigDecimal inBase() {
        return inBase;
    }

    /**
     * One of this unit in kilograms.
     *
     * @param density in g/mL, which is kg/L; needed for a volume
     * @return empty for a volume without a density, and for a count
     */
    public Optional<BigDecimal> inKg(@Nullable BigDecimal density) {
        return switch (kind) {
            case MASS -> Optional.of(inBase);
            case VOLUME -> Optional.ofNullable(density).map(inBase::multiply);
            case COUNT -> Optional.empty();
        };
    }

    private static Map<String, Measure> byWord() {
        Map<String, Measure> byWord = new HashMap<>();
        for (Measure measure : values()) {
            put(byWord, measure.symbol, measure);
            for (String word : measure.words) {
                put(byWord, word, measure);
            }
        }
        return byWord;
    }

    private static void put(Map<String, Measure> byWord, String word, Measure measure) {
        Measure other = byWord.put(squeeze(word), measure);
        if (other != null && other != measure) {
            throw new IllegalStateException(
                    "\"" + word + "\" stands for " + other.symbol + " and for " + measure.symbol);
        }
    }

    private static String squeeze(String word) {
        return LEFT_OUT.matcher(word.toLowerCase(Locale.ROOT)).replaceAll("");
    }
}
