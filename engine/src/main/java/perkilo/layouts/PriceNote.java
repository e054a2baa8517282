package perkilo.layouts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.reading.table.CurrencySign;

/**
 * What words beside or above a price say about it: {@code €/kg}, {@code EUR per 100 g}, {@code je Gebinde}.
 *
 * @param currency null if they name none
 * @param per how much the price is for; null if they do not say, or if it is for one pack
 * @param pack whether it is for one pack
 * @param content what that pack holds; null if they do not say
 */
public record PriceNote(
        @Nullable CurrencySign currency,
        @Nullable Quantity per,
        boolean pack,
        @Nullable Quantity content) {

    /** Words that say nothing about a price. */
    public static final PriceNote NONE = new PriceNote(null, null, false, null);

    private static final Pattern PER = Pattern.compile(
            "(?i)(?:^|\\s)(?:per|pro|je|par|au|à la|le|la|al|alla|il|por|el|cada|a)(?=\\s|$)|/|(?:(?<=\\s)|^)(?:l|all|à l)['’](?=\\p{L})");
    private static final Pattern MARKS = Pattern.compile("[()\\[\\]:;*]");
    private static final Pattern AMOUNT = Pattern.compile("(\\d+)(?:[., '’](000))?\\s*(.*)");

    private static final int LONGEST_PER = 4;
    private static final Pattern ROUND = Pattern.compile("100|10?[., '’]?000");

    /** What words say; empty if they are not understood. */
    public static Optional<PriceNote> of(String words) {
        String text = MARKS.matcher(ListWords.tidy(words)).replaceAll(" ").strip();
        if (isRemark(text)) {
            return Optional.of(NONE);
        }
        Matcher per = PER.matcher(text);
        if (per.find()) {
            CurrencySign before = currency(text.substring(0, per.start())).orElse(null);
            if (before == null && !isRemark(text.substring(0, per.start()))) {
                return Optional.empty();
            }
            String after = text.substring(per.end()).strip();
            return basis(after).or(() -> pieces(after)).map(note -> note.in(before));
        }
        Optional<CurrencySign> sign = currency(text);
        if (sign.isPresent()) {
            return sign.map(found -> new PriceNote(found, null, false, null));
        }
        return basis(text).filter(note -> !note.isBareNumberWord());
    }

    /**
     * What a price is for: {@code kg}, {@code 100 g}, {@code pack}, {@code 25 kg drum}, with or without a currency
     * after it.
     */
    private static Optional<PriceNote> basis(String text) {
        for (String[] cut : cuts(text)) {
            Optional<CurrencySign> after = currency(cut[1]);
            if (!isRemark(cut[1]) && after.isEmpty()) {
                continue;
            }
            Optional<PriceNote> basis = plainBasis(cut[0]);
            if (basis.isPresent()) {
                return basis.map(note -> note.in(after.orElse(null)));
            }
        }
        return Optional.empty();
    }

    private static Optional<PriceNote> plainBasis(String text) {
        if (ListWords.is("container", text)) {
            return Optional.of(new PriceNote(null, null, true, null));
        }
        Optional<Quantity> unit = Quantity.unit(text);
        if (unit.isPresent()) {
            return unit.map(one -> new PriceNote(null, one, false, null));
        }
        Matcher amount = AMOUNT.matcher(text);
        if (!amount.matches()) {
            return Optional.empty();
        }
        boolean marked = amount.group(2) != null;
        BigDecimal number = new BigDecimal(amount.group(1) + (marked ? amount.group(2) : ""));
        if (number.signum() == 0) {
            return Optional.empty();
        }
        Optional<Quantity> some = Quantity.unit(amount.group(3)).map(one -> one.times(number));
        if (marked && some.filter(one -> one.measure().isCount()).isEmpty()) {
            return Optional.empty(); // 1.000 kg can be one kilogram
        }
        if (some.isPresent()) {
            return some.map(quantity -> new PriceNote(null, quantity, false, null));
        }
        int space = amount.group(3).indexOf(' ');
        if (space > 0 && ListWords.is("container", amount.group(3).substring(space + 1))) {
            return Quantity.unit(amount.group(3).substring(0, space))
                    .map(one -> new PriceNote(null, null, true, one.times(number)));
        }
        return Optional.empty();
    }

    /** A price per 100, 1,000 or 10,000 of things that are counted. */
    private static Optional<PriceNote> pieces(String text) {
        for (String[] cut : cuts(text)) {
            Matcher round = ROUND.matcher(cut[0]);
            Optional<CurrencySign> after = currency(cut[1]);
            if (round.matches() && (isRemark(cut[1]) || after.isPresent())) {
                BigDecimal number = new BigDecimal(cut[0].replaceAll("[., '’]", ""));
                return Optional.of(new PriceNote(
                        after.orElse(null), Quantity.unit("each").orElseThrow().times(number), false, null));
            }
        }
        return Optional.empty();
    }

    /** Every way to part a text into words before and after a space, the whole first. */
    private static List<String[]> cuts(String text) {
        List<String[]> cuts = new ArrayList<>();
        cuts.add(new String[] {text, ""});
        for (int space = text.lastIndexOf(' '); space > 0; space = text.lastIndexOf(' ', space - 1)) {
            cuts.add(new String[] {
                text.substring(0, space).strip(), text.substring(space).strip()
            });
        }
        return cuts;
    }

    private static Optional<CurrencySign> currency(String words) {
        StringBuilder left = new StringBuilder();
        for (String word : words.strip().split("[ ,]+", -1)) {
            if (!isRemark(word)) {
                left.append(left.length() == 0 ? "" : " ").append(word);
            }
        }
        if (left.length() > 1 && left.charAt(left.length() - 1) == '.') {
            left.setLength(left.length() - 1);
        }
        return left.length() == 0 ? Optional.empty() : CurrencySign.parse(left.toString());
    }

    private static boolean isRemark(String words) {
        String text = words.strip();
        if (text.isEmpty() || ListWords.is("remark", text)) {
            return true;
        }
        String[] each = text.toLowerCase(Locale.ROOT).split("[ ,.]+", -1);
        for (String word : each) {
            if (!word.isEmpty() && !ListWords.is("remark", word)) {
                return false;
            }
        }
        return true;
    }

    /** Whether it names one unit of several pieces: {@code gross} without "per" mostly means the opposite of net. */
    private boolean isBareNumberWord() {
        return per != null
                && per.measure().isCount()
                && !per.measure().isBase()
                && per.amount().compareTo(BigDecimal.ONE) == 0;
    }

    private PriceNote in(@Nullable CurrencySign other) {
        return other == null ? this : new PriceNote(other, per, pack, content);
    }

    /** Whether words say what a price is for, and cannot mean anything else: {@code per lb}, {@code each}. */
    public static boolean saysWhatFor(String words) {
        String text = ListWords.tidy(words);
        boolean sounds = (mayHoldPer(text) && PER.matcher(text).find())
                || Quantity.unit(text).filter(unit -> unit.measure().isCount()).isPresent();
        return sounds && of(words).filter(PriceNote::saysWhatFor).isPresent();
    }

    /** Whether a text has a slash or a word of at most three letters. */
    private static boolean mayHoldPer(String text) {
        int letters = 0;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            if (letter == '/' || letter == '\'' || letter == '’') {
                return true;
            }
            if (letter == ' ') {
                if (letters > 0 && letters <= LONGEST_PER) {
                    return true;
                }
                letters = 0;
            } else {
                letters++;
            }
        }
        return letters > 0 && letters <= LONGEST_PER;
    }

    /** Whether another note says that prices are for the same. */
    public boolean isSameBasis(PriceNote other) {
        return pack == other.pack && Objects.equals(per, other.per);
    }

    /** What the price is for, in words after "per". */
    String basisWords() {
        Quantity quantity = per;
        if (pack || quantity == null) {
            return "pack";
        }
        return quantity.amount().compareTo(BigDecimal.ONE) == 0
                ? quantity.measure().symbol()
                : quantity.toString();
    }

    /** Whether it says what the price is for. */
    public boolean saysWhatFor() {
        return pack || per != null;
    }
}
