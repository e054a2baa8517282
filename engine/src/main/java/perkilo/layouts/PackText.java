package perkilo.layouts;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.units.Measure;

/**
 * A pack as suppliers write it: {@code 25 kg drum}, {@code 5 × 5 kg}, {@code Fass à 190 kg}, {@code 1 lb}.
 *
 * @param content everything in it
 * @param pieces how many smaller packs it is made of; 1 for a single pack
 * @param weight what the content weighs, if it is given as a volume and the weight stands beside it: {@code 5 gal pail
 *     (36 lb)}; null otherwise
 */
public record PackText(
        Quantity content, int pieces, @Nullable Quantity weight) {

    private static final Pattern WITH_BRACKET = Pattern.compile("([^()]*\\S)\\s*\\(([^()]*\\d[^()]*)\\)([^()\\d]*)");
    private static final BigDecimal ALMOST = new BigDecimal("0.02");

    /** A pack of which only one content is given. */
    public PackText(Quantity content, int pieces) {
        this(content, pieces, null);
    }

    /**
     * The content as a price for so much counts it: the weight if it is known and the price is for a weight or a pack.
     *
     * @param per what the price is for; null for a pack
     */
    public Quantity content(@Nullable Measure per) {
        boolean volume = per != null && per.kind() == content.measure().kind();
        return weight == null || volume ? content : weight;
    }

    private static final String NUMBER = "(\\d(?:[\\d.,'’]|[ \\u00A0](?=\\d{3}(?!\\d)))*)";
    private static final Pattern TIMES = Pattern.compile(
            "([^\\d]*)(\\d{1,4})\\s*(?:\\p{L}[\\p{L}.]*\\s+)?[x×*]\\s*" + NUMBER + "\\s*([^\\d]*)",
            Pattern.CASE_INSENSITIVE);

    /** Words beside a quantity that say it is not what one pack holds: gross weight, a minimum, about. */
    private static final Set<String> CHANGING = Set.of(
            "gross",
            "brutto",
            "brut",
            "lordo",
            "bruto",
            "tare",
            "tara",
            "min",
            "mind",
            "mindestens",
            "minimum",
            "max",
            "ca",
            "approx",
            "about",
            "circa",
            "env",
            "environ",
            "etwa",
            "aprox",
            "from",
            "ab",
            "up",
            "bis",
            "or",
            "oder",
            "ou",
            "dozen",
            "dutzend",
            "x",
            "and",
            "und",
            "et",
            "plus",
            "per",
            "pro",
            "je",
            "par",
            "each",
            "half");

    private static final Pattern HYPHEN = Pattern.compile("(?<=[\\d\\p{L}])[-‑–](?=\\p{L})");
    private static final Pattern FIRST_NUMBER = Pattern.compile("([^\\d]*)" + NUMBER + "\\s*([^\\d]*)");
    private static final Pattern PER_PACK = Pattern.compile("(?<=[\\p{L}.])\\s*/\\s*(?=\\p{L})");
    private static final Pattern BRACKETS =
            Pattern.compile("[()\\[\\],:;]+(?=\\s|$)|(?<=^|\\s)[()\\[\\]]+|(?<=[\\p{L}.])[()\\[\\]]");
    private static final Pattern GLUED_BRACKET = Pattern.compile("(?<=[\\p{L}\\d])[(\\[]");
    private static final Pattern TRAILING_MARKS = Pattern.compile("[.,]+$");
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
        return plain(text, mark, unit).or(() -> twice(text, mark, unit));
    }

    /** A pack whose content is given twice, the second time in brackets: as a weight, or in another unit. */
    private static Optional<PackText> twice(String text, DecimalMark mark, @Nullable Quantity unit) {
        Matcher both = WITH_BRACKET.matcher(ListWords.tidy(text));
        if (!both.matches()) {
            return Optional.empty();
        }
        PackText first = plain(both.group(1) + both.group(3), mark, unit).orElse(null);
        PackText second = plain(both.group(2), mark, null).orElse(null);
        if (first == null || second == null) {
            return Optional.empty();
        }
        Measure.Kind kind = first.content().measure().kind();
        Measure.Kind other = second.content().measure().kind();
        if (kind == Measure.Kind.VOLUME && other == Measure.Kind.MASS) {
            return Optional.of(new PackText(first.content(), first.pieces(), second.content()));
        }
        if (kind == Measure.Kind.MASS && other == Measure.Kind.VOLUME) {
            return Optional.of(first);
        }
        return second.content()
                .in(first.content().measure())
                .filter(amount -> amount.subtract(first.content().amount())
                                .abs()
                                .compareTo(first.content().amount().multiply(ALMOST))
                        <= 0)
                .map(same -> first);
    }

    private static Optional<PackText> plain(String text, DecimalMark mark, @Nullable Quantity unit) {
        String tidy = HYPHEN.matcher(ListWords.tidy(text)).replaceAll(" ");
        tidy = PER_PACK.matcher(GLUED_BRACKET.matcher(tidy).replaceAll(" (")).replaceAll(" ");
        String words = BRACKETS.matcher(tidy).replaceAll(" ").strip();
        Matcher times = TIMES.matcher(words);
        if (times.matches() && isFiller(times.group(1))) {
            int pieces = Integer.parseInt(times.group(2));
            return pieces == 0
                    ? Optional.empty()
                    : one(times.group(3), times.group(4), mark, unit)
                            .map(each -> new PackText(each.times(BigDecimal.valueOf(pieces)), pieces));
        }
        Matcher single = FIRST_NUMBER.matcher(words);
        if (!single.matches() || !isFiller(single.group(1))) {
            return Optional.empty();
        }
        return one(single.group(2), single.group(3), mark, unit).map(content -> new PackText(content, 1));
    }

    private static Optional<Quantity> one(String digits, String words, DecimalMark mark, @Nullable Quantity bareUnit) {
        BigDecimal number =
                mark.number(TRAILING_MARKS.matcher(digits).replaceAll("")).orElse(null);
        if (number == null || number.signum() <= 0) {
            return Optional.empty();
        }
        String rest = words.strip();
        if (isFiller(rest)) {
            return Optional.ofNullable(bareUnit).map(unit -> unit.times(number));
        }
        for (int end = rest.length(); end > 0; end = rest.lastIndexOf(' ', end - 1)) {
            Optional<Quantity> unit = Quantity.unit(rest.substring(0, end));
            if (unit.isPresent() && describes(rest.substring(end))) {
                return unit.map(found -> found.times(number));
            }
        }
        return Optional.empty();
    }

    /** Whether words after the quantity describe the pack, and cannot change how much is in it. */
    private static boolean describes(String words) {
        for (String word : words.strip().split("[ .]+", -1)) {
            if (CHANGING.contains(ListWords.key(word)) || Quantity.unit(word).isPresent()) {
                return false;
            }
        }
        return true;
    }

    /** Whether a text has digits that can be read in two ways. */
    public static boolean isAmbiguous(String text) {
        return NumberWords.of(text)
                .map(NumberWords::digits)
                .filter(DecimalMark::isAmbiguous)
                .isPresent();
    }

    /** Whether words do not say what a pack holds: its kind, its material, or a preposition. */
    private static boolean isFiller(String words) {
        if (words.isBlank() || ListWords.is("container", words)) {
            return true;
        }
        for (String word : words.strip().split("[ .]+", -1)) {
            if (!word.isEmpty() && !ListWords.is("container", word) && !isLink(word)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a word joins the kind of pack and its content, or says what the pack is made of. */
    static boolean isLink(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "à",
                    "a",
                    "á",
                    "of",
                    "de",
                    "d'",
                    "da",
                    "di",
                    "con",
                    "en",
                    "in",
                    "mit",
                    "zu",
                    "per",
                    "pro",
                    "je",
                    "par",
                    "net",
                    "netto",
                    "neto",
                    "steel",
                    "stahl",
                    "metal",
                    "hdpe",
                    "ldpe",
                    "pe",
                    "pp",
                    "plastic",
                    "kunststoff",
                    "plastique",
                    "fibre",
                    "fiber",
                    "kraft",
                    "paper",
                    "papier",
                    "glass",
                    "glas",
                    "verre",
                    "alu",
                    "aluminium",
                    "blue",
                    "black",
                    "white",
                    "open",
                    "top",
                    "-",
                    "–",
                    "+" -> true;
            default -> false;
        };
    }
}
