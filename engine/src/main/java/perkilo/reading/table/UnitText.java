package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.units.Measure;

/**
 * The unit beside a number or in a header: {@code kg}, {@code €/kg}, {@code per pack}.
 *
 * @param words as typed; empty where there are none
 * @param currency null where it names none
 * @param measure null where it names none
 * @param pack whether it says "per pack"
 * @param count how many of the measure: 100 in {@code €/100 g}; one where it names none
 * @param bareGallon whether the measure is a gallon of which the words do not say whose
 */
public record UnitText(
        String words,
        @Nullable CurrencySign currency,
        @Nullable Measure measure,
        boolean pack,
        BigDecimal count,
        boolean bareGallon) {

    private UnitText(
            String words, @Nullable CurrencySign currency, @Nullable Measure measure, boolean pack, BigDecimal count) {
        this(words, currency, measure, pack, count, false);
    }

    /** No unit. */
    public static final UnitText NONE = new UnitText("", null, null, false, BigDecimal.ONE);

    private static final Pattern PER =
            Pattern.compile("^(.*?)(?:/|(?:^|\\s)(?:per|je|pro|par|al|por)(?:\\s|$))(.*)$", Pattern.CASE_INSENSITIVE);

    /**
     * Numbers that prices are usually quoted for. A price for another number, such as 25 kg, may as well be a price
     * from that quantity on.
     */
    private static final Pattern COUNTED = Pattern.compile("(10|100|1000)\\s*(\\p{L}.*)");

    private static final Pattern IN = Pattern.compile("^in\\s+", Pattern.CASE_INSENSITIVE);
    private static final Pattern COMMA = Pattern.compile("^,\\s*");

    /** Words after "per" that add nothing, because the column already says them. */
    private static final Set<String> COUNTED_BY = Set.of("h", "hr", "hour", "month", "year", "order", "batch");

    /** The currency, the unit or both that words name; empty if they are not recognised. */
    public static Optional<UnitText> parse(String words) {
        if (words.isEmpty()) {
            return Optional.of(NONE);
        }
        String stripped = words.strip();
        String text = COMMA.matcher(IN.matcher(stripped).replaceFirst("")).replaceFirst("");
        if (text.isEmpty()) {
            return Optional.of(NONE);
        }
        Optional<UnitText> whole = simple(text);
        if (whole.isPresent()) {
            return whole;
        }
        Matcher per = PER.matcher(text);
        if (!per.matches()) {
            return Optional.empty();
        }
        String before = per.group(1).strip();
        String after = per.group(2).strip();
        int last = after.lastIndexOf(' ');
        return before.isEmpty()
                        && last > 0
                        && CurrencySign.parse(after.substring(last + 1)).isPresent()
                ? joined(
                        text,
                        after.substring(last + 1),
                        after.substring(0, last).strip())
                : joined(text, before, after);
    }

    /** Whether a word means one pack, whatever is in it. */
    public static boolean isPack(String word) {
        return PackWords.isPack(word);
    }

    /** The same unit with another currency, or none. */
    UnitText in(@Nullable CurrencySign other) {
        return new UnitText(words, other, measure, pack, count, bareGallon);
    }

    /** Whether it is one of a unit, or none. */
    boolean isOne() {
        return count.compareTo(BigDecimal.ONE) == 0;
    }

    /**
     * Whether it is only a word for several pieces, which does not say what a price is for: {@code gross} beside a
     * price is mostly the opposite of net. {@code per gross} is not such a word.
     */
    boolean isBareNumberWord() {
        return measure != null
                && measure.isCount()
                && !measure.isBase()
                && Measure.parse(words).isPresent();
    }

    private static Optional<UnitText> simple(String text) {
        Optional<Measure> measure = Measure.parse(text);
        if (measure.isPresent()) {
            return Optional.of(measured(text, null, measure.get(), text, BigDecimal.ONE));
        }
        if (isPack(text)) {
            return Optional.of(new UnitText(text, null, null, true, BigDecimal.ONE));
        }
        return CurrencySign.parse(text).map(sign -> new UnitText(text, sign, null, false, BigDecimal.ONE));
    }

    private static UnitText measured(
            String words, @Nullable CurrencySign currency, Measure measure, String word, BigDecimal count) {
        boolean gallon = measure == Measure.US_GAL && Measure.isBareGallon(word);
        return new UnitText(words, currency, measure, false, count, gallon);
    }

    private static Optional<UnitText> joined(String words, String before, String after) {
        CurrencySign currency = CurrencySign.parse(before).orElse(null);
        if (currency == null && !before.isEmpty()) {
            return Optional.empty();
        }
        if (currency != null && COUNTED_BY.contains(after.toLowerCase(Locale.ROOT))) {
            return Optional.of(new UnitText(words, currency, null, false, BigDecimal.ONE));
        }
        if (isPack(after)) {
            return Optional.of(new UnitText(words, currency, null, true, BigDecimal.ONE));
        }
        Matcher counted = COUNTED.matcher(after);
        String measured = counted.matches() ? counted.group(2) : after;
        BigDecimal count = counted.matches() ? new BigDecimal(counted.group(1)) : BigDecimal.ONE;
        return Measure.parse(measured).map(measure -> measured(words, currency, measure, measured, count));
    }
}
