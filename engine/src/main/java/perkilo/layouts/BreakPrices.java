package perkilo.layouts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Prices with their breaks in one cell: {@code 1–4: 12.50 / 5+: 11.80}, {@code ab 25 kg 3,20; ab 100 kg 2,95},
 * {@code 12.50 (5+: 11.80)}.
 *
 * @param from the quantity that the price begins at; null for the first price
 * @param price the text of the price
 */
record BreakPrices(@Nullable BreakText from, String price) {

    private static final Pattern PARTS = Pattern.compile(
            "\\s*[;|\\n]\\s*|\\s+/\\s+|,\\s+(?=(?:ab|from|dès|des|à partir|da|desde|≥|>=)\\b|\\d+\\s*\\+|\\d+\\s*[-–]\\s*\\d+\\s*:)");
    private static final Pattern BRACKETED = Pattern.compile("([^()]+)\\(([^()]+)\\)\\s*");
    private static final Pattern SIGN = Pattern.compile("\\s*[:=@]\\s*");
    private static final int LONGEST = 200;
    private static final int SHORTEST = 8;

    /** Whether a text may hold several prices; most texts do not, and this costs little. */
    static boolean mayBe(String text) {
        if (text.length() < SHORTEST || text.length() > LONGEST) {
            return false;
        }
        int numbers = 0;
        boolean between = false;
        boolean digit = false;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            boolean inNumber = (letter >= '0' && letter <= '9') || (digit && (letter == '.' || letter == ','));
            numbers += inNumber && !digit ? 1 : 0;
            digit = inNumber;
            between |=
                    letter == ':' || letter == ';' || letter == '(' || letter == '|' || letter == '=' || letter == '@';
        }
        return numbers > 1 && between;
    }

    /** The texts of the prices in a cell; the text itself if it holds one. */
    static List<String> parts(String text) {
        return mayBe(text)
                ? of(text).map(all -> all.stream().map(BreakPrices::price).toList())
                        .orElse(List.of(text))
                : List.of(text);
    }

    /** The prices of a text; empty if it does not hold breaks that are all understood. */
    static Optional<List<BreakPrices>> of(String text) {
        if (!mayBe(text)) {
            return Optional.empty();
        }
        List<BreakPrices> all = new ArrayList<>();
        Matcher bracketed = BRACKETED.matcher(text);
        String rest = text;
        if (bracketed.matches()) {
            if (NumberWords.of(bracketed.group(1)).isEmpty()) {
                return Optional.empty();
            }
            all.add(new BreakPrices(null, bracketed.group(1).strip()));
            rest = bracketed.group(2);
        }
        for (String part : PARTS.split(rest.strip(), -1)) {
            BreakPrices one = part(part.strip()).orElse(null);
            if (one == null) {
                return Optional.empty();
            }
            all.add(one);
        }
        return Optional.of(all);
    }

    /** The prices of a text beside others, each with the quantity that it begins at; empty if it holds none. */
    static Optional<List<BreakPrices>> inWords(String text) {
        List<BreakPrices> all = new ArrayList<>();
        for (String words : PARTS.split(ListWords.tidy(text), -1)) {
            BreakPrices one = part(words.strip()).orElse(null);
            boolean from = one != null
                    && one.from() != null
                    && one.from().kind() == BreakText.Kind.FROM
                    && one.from().saysUnit();
            if (one == null || !from) {
                return Optional.empty();
            }
            all.add(one);
        }
        return Optional.of(all);
    }

    private static Optional<BreakPrices> part(String text) {
        Matcher sign = SIGN.matcher(text);
        if (sign.find()) {
            return pair(text.substring(0, sign.start()), text.substring(sign.end()));
        }
        for (int space = text.lastIndexOf(' '); space > 0; space = text.lastIndexOf(' ', space - 1)) {
            Optional<BreakPrices> pair = pair(text.substring(0, space), text.substring(space + 1));
            if (pair.isPresent()) {
                return pair;
            }
        }
        return Optional.empty();
    }

    private static Optional<BreakPrices> pair(String quantity, String price) {
        boolean priced = NumberWords.of(price)
                .filter(parts -> PriceNote.of(parts.words()).isPresent())
                .isPresent();
        return priced
                ? BreakText.of(quantity)
                        .filter(from -> from.kind() == BreakText.Kind.FROM || (from.kind() == BreakText.Kind.BARE))
                        .map(from -> new BreakPrices(from, price.strip()))
                : Optional.empty();
    }
}
