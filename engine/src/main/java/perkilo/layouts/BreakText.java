package perkilo.layouts;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A price break as suppliers write it: {@code 1–4}, {@code 5+}, {@code ≥ 25 kg}, {@code ab 100 kg}.
 *
 * @param digits the quantity that it begins at, as typed; {@code 0} for "up to"
 * @param unit the unit of the quantity; null if the text does not say
 * @param packs whether it counts packs
 * @param kind how the quantity is meant
 */
public record BreakText(String digits, @Nullable Quantity unit, boolean packs, Kind kind) {

    /** How a quantity is meant. */
    public enum Kind {
        /** The price holds from this quantity upwards. */
        FROM,
        /** More than this quantity; which quantity is the first is not known. */
        ABOVE,
        /** A quantity alone: a break, or a pack. */
        BARE
    }

    private static final String Q = "(\\d[\\d.,'’]*(?: \\d{3}(?!\\d))*)";
    private static final String U = "\\s*(\\p{L}[\\p{L}. ]*?)?";
    private static final String MORE =
            "(?:\\+|(?:and|or|&)?\\s*(?:more|up(?:wards)?|above|over)|(?:und|u\\.)\\s*mehr|et (?:plus|au[ -]del[aà])|ou plus|e (?:oltre|pi[uù])|o (?:pi[uù]|m[aá]s)|y m[aá]s)";
    private static final Pattern FROM = Pattern.compile(
            "(?iu)(?:from|starting at|ab|von|d[eè]s|des|[aà] partir de|[aà] p\\. ?de|a partire da|da|desde|>=|=>|≥|min\\.?|mind\\.?)\\s*"
                    + Q + U + "\\s*" + MORE + "?");
    private static final Pattern PLUS = Pattern.compile("(?iu)" + Q + "\\s*" + MORE + U + "|" + Q + U + "\\s*" + MORE);
    private static final Pattern RANGE =
            Pattern.compile("(?iu)" + Q + U + "\\s*(?:-|to|bis|à|a|al|hasta|\\.\\.\\.?|…)\\s*(?:<\\s*)?" + Q + U);
    private static final Pattern UP_TO = Pattern.compile(
            "(?iu)(?:<=?|≤|up to|under|below|less than|bis(?: zu)?|unter|jusqu['’][aà]|moins de|fino a|meno di|hasta|menos de)\\s*"
                    + Q + U);
    private static final Pattern ABOVE = Pattern.compile(
            "(?iu)(?:>|over|above|more than|[uü]ber|ueber|mehr als|plus de|au[ -]dessus de|oltre|pi[uù] di|m[aá]s de)\\s*"
                    + Q + U);
    private static final Pattern ALONE = Pattern.compile("(?iu)" + Q + U);
    private static final int LONGEST = 60;

    /** The break that a text describes; empty if it describes none. */
    public static Optional<BreakText> of(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String tidy = ListWords.tidy(text).replaceAll("[–—−‐‑]", "-").strip();
        Matcher range = RANGE.matcher(tidy);
        if (range.matches()) {
            String unit = range.group(4) == null ? range.group(2) : range.group(4);
            return made(range.group(1), unit, Kind.FROM);
        }
        Matcher plus = PLUS.matcher(tidy);
        if (plus.matches()) {
            boolean first = plus.group(1) != null;
            return made(plus.group(first ? 1 : 3), plus.group(first ? 2 : 4), Kind.FROM);
        }
        Matcher upTo = UP_TO.matcher(tidy);
        if (upTo.matches()) {
            return made("0", upTo.group(2), Kind.FROM);
        }
        return oneOf(FROM, tidy, Kind.FROM)
                .or(() -> oneOf(ABOVE, tidy, Kind.ABOVE))
                .or(() -> oneOf(ALONE, tidy, Kind.BARE));
    }

    private static Optional<BreakText> oneOf(Pattern pattern, String text, Kind kind) {
        Matcher found = pattern.matcher(text);
        return found.matches() ? made(found.group(1), found.group(2), kind) : Optional.empty();
    }

    private static Optional<BreakText> made(String digits, @Nullable String unitWords, Kind kind) {
        String number = digits.replaceAll("[.,]+$", "").strip();
        String words = unitWords == null ? "" : unitWords.strip();
        if (words.isEmpty()) {
            return Optional.of(new BreakText(number, null, false, kind));
        }
        if (ListWords.is("container", words)) {
            return Optional.of(new BreakText(number, null, true, kind));
        }
        return Quantity.unit(words).map(unit -> new BreakText(number, unit, false, kind));
    }

    /** The quantity; empty if its number can be read in two ways. */
    public Optional<BigDecimal> quantity(DecimalMark mark) {
        return mark.number(digits);
    }

    /** Whether the break itself says what it counts. */
    public boolean saysUnit() {
        return packs || unit != null || digits.equals("0");
    }
}
