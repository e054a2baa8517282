package perkilo.layouts;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A pack as suppliers write it: {@code 25 kg drum}, {@code 5 × 5 kg}, {@code Fass à 190 kg}, {@code 1 lb}.
 *
 * @param content everything in it
 * @param pieces how many smaller packs it is made of; 1 for a single pack
 */
public record PackText(Quantity content, int pieces) {

    private static final String NUMBER = "(\\d(?:[\\d.,'’]|[ \\u00A0](?=\\d{3}(?!\\d)))*)";
    private static final Pattern TIMES = Pattern.compile(
            "(\\d{1,4})\\s*(?:\\p{L}[\\p{L}.]*\\s+)?[x×*]\\s*" + NUMBER + "\\s*(.*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern HYPHEN = Pattern.compile("(?<=[\\d\\p{L}])[-‑](?=\\p{L})");
    private static final Pattern FIRST_NUMBER = Pattern.compile("([^\\d]*)" + NUMBER + "\\s*([^\\d]*)");
    private static final int LONGEST = 80;

    /**
     * The pack that a text describes.
     *
     * @param mark how its numbers are written
     * @param unit the unit of a bare number; null if it is not known
     * @return empty if the text is not understood
     */
    public static Optional<PackText> of(String text, DecimalMark mark, @Nullable Quantity unit) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String tidy = HYPHEN.matcher(ListWords.tidy(text)).replaceAll(" ");
        String words = tidy.replaceAll("[()\\[\\],:;/]+(?=\\s|$)|(?<=^|\\s)[()\\[\\]]+|(?<=\\p{L})[)\\]]", " ")
                .strip();
        Matcher times = TIMES.matcher(withoutContainers(words));
        if (times.matches()) {
            int pieces = Integer.parseInt(times.group(1));
            return pieces == 0
                    ? Optional.empty()
                    : one(times.group(2), times.group(3), mark, unit)
                            .map(each -> new PackText(each.times(BigDecimal.valueOf(pieces)), pieces));
        }
        Matcher single = FIRST_NUMBER.matcher(words);
        if (!single.matches() || !isFiller(single.group(1))) {
            return Optional.empty();
        }
        return one(single.group(2), single.group(3), mark, unit).map(content -> new PackText(content, 1));
    }

    private static Optional<Quantity> one(String digits, String words, DecimalMark mark, @Nullable Quantity bareUnit) {
        BigDecimal number = mark.number(digits.replaceAll("[.,]+$", "")).orElse(null);
        if (number == null || number.signum() <= 0) {
            return Optional.empty();
        }
        String rest = words.strip();
        if (isFiller(rest)) {
            return Optional.ofNullable(bareUnit).map(unit -> unit.times(number));
        }
        for (int end = rest.length(); end > 0; end = rest.lastIndexOf(' ', end - 1)) {
            Optional<Quantity> unit = Quantity.unit(rest.substring(0, end));
            if (unit.isPresent() && isFiller(rest.substring(end))) {
                return unit.map(found -> found.times(number));
            }
        }
        return Optional.empty();
    }

    /** Whether a text has digits that can be read in two ways. */
    public static boolean isAmbiguous(String text) {
        return NumberWords.of(text)
                .map(NumberWords::digits)
                .filter(DecimalMark::isAmbiguous)
                .isPresent();
    }

    private static String withoutContainers(String words) {
        StringBuilder kept = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            if (!ListWords.is("container", word) && !isLink(word)) {
                kept.append(kept.length() == 0 ? "" : " ").append(word);
            }
        }
        return kept.toString();
    }

    /** Whether words do not say what a pack holds: its kind, or a preposition. */
    private static boolean isFiller(String words) {
        for (String word : words.strip().split("[ .]+", -1)) {
            if (!word.isEmpty() && !ListWords.is("container", word) && !isLink(word)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isLink(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "à",
                    "a",
                    "of",
                    "de",
                    "mit",
                    "zu",
                    "per",
                    "pro",
                    "je",
                    "par",
                    "net",
                    "netto",
                    "steel",
                    "hdpe",
                    "pe",
                    "plastic",
                    "fibre",
                    "paper",
                    "1" -> !word.equals("1");
            default -> false;
        };
    }
}
