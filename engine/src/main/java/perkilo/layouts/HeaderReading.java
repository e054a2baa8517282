package perkilo.layouts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a header says about its column.
 *
 * @param use what the column is used for; null if it can be several things
 * @param note what the header says about prices, if they are prices
 * @param choices what the column can be used for, in the words of a mapping file; empty if {@code use} is clear
 * @param doubt why {@code use} is not clear
 */
public record HeaderReading(@Nullable ColumnUse use, PriceNote note, List<String> choices, Doubt doubt) {

    /** Why a header does not say what its column is used for. */
    public enum Doubt {
        NONE,
        /** A quantity can be a break or a pack. */
        QUANTITY,
        /** The prices include VAT. */
        VAT,
        /** It speaks of prices or costs, in words that are not understood. */
        COST,
        /** A date can be the first day or the last. */
        VALIDITY
    }

    private static final Pattern DOUBTFUL = Pattern.compile("[\\d%/]|(?i)cent|\\bct\\b|pence|thousand|tausend|teur");

    private static final Pattern BRACKETS = Pattern.compile("[(\\[]([^)\\]]*)[)\\]]");
    private static final Pattern BILINGUAL = Pattern.compile("\\s/\\s|\\n|\\|");
    private static final Pattern LAST_COMMA = Pattern.compile("[,;]+$");
    private static final Pattern WITH_VAT =
            Pattern.compile("(?iu)[(\\[]?(?:inkl\\.?|incl\\.?|including|mit|with|avec|con|einschl\\.?)?\\s*"
                    + "(?:mwst\\.?|ust\\.?|vat|tva|iva|ttc|brutto|gross|included|inclusa|incluido|incluse)[)\\]]?");
    private static final Pattern BRACKET = Pattern.compile("[()\\[\\]]");
    private static final int LONGEST = 120;

    public HeaderReading {
        choices = List.copyOf(choices);
    }

    /** What a header says; empty if its words are not known. */
    public static Optional<HeaderReading> of(String header) {
        if (header.isBlank() || header.length() > LONGEST) {
            return Optional.empty();
        }
        if (ListWords.holds("with vat", header)) {
            PriceNote note = plain(WITH_VAT.matcher(header).replaceAll(" "))
                    .map(HeaderReading::note)
                    .orElse(PriceNote.NONE);
            return Optional.of(
                    new HeaderReading(null, note, List.of("price with 19 % VAT", "price", "nothing"), Doubt.VAT));
        }
        return known(header).or(() -> ListWords.speaksOfCost(header) ? Optional.of(cost(header)) : Optional.empty());
    }

    /** What the end of a header says of prices, whatever comes before it: {@code Tagesnotierung EUR/kg}. */
    static PriceNote noteIn(String header) {
        String text = BRACKET.matcher(header).replaceAll(" ").strip();
        for (int space = text.indexOf(' '); space > 0; space = text.indexOf(' ', space + 1)) {
            Optional<PriceNote> note = PriceNote.of(text.substring(space)).filter(said -> !said.equals(PriceNote.NONE));
            if (note.isPresent()) {
                return note.get();
            }
        }
        return PriceNote.NONE;
    }

    private static HeaderReading cost(String header) {
        return new HeaderReading(
                null,
                noteIn(header),
                List.of(
                        "price",
                        Meaning.SURCHARGE.word() + ColumnUse.LIKE_PRICE,
                        "surcharge per kg",
                        "surcharge per pack",
                        Meaning.ORDER_CHARGE.word(),
                        "surcharge %",
                        "discount %",
                        "minimum order",
                        "nothing"),
                Doubt.COST);
    }

    private static Optional<HeaderReading> known(String header) {
        Optional<HeaderReading> whole = plain(header);
        if (whole.isPresent()) {
            return whole;
        }
        HeaderReading said = null;
        for (String part : BILINGUAL.split(header, -1)) {
            HeaderReading one = plain(part).orElse(null);
            if (one == null) {
                continue;
            }
            if (said != null && !said.words().equals(one.words())) {
                return Optional.empty();
            }
            said = one;
        }
        return Optional.ofNullable(said);
    }

    private String words() {
        return use == null ? choices.toString() : use.words();
    }

    private static Optional<HeaderReading> plain(String header) {
        Matcher brackets = BRACKETS.matcher(header);
        List<String> inside = new ArrayList<>();
        while (brackets.find()) {
            inside.add(brackets.group(1));
        }
        String main = BRACKETS.matcher(header)
                .replaceAll(" ")
                .replaceAll("[\\s\\p{Z}]+", " ")
                .replaceAll("[:*]+$", "")
                .strip();
        PriceNote note = PriceNote.NONE;
        BreakText insideBreak = null;
        boolean odd = false;
        for (String words : inside) {
            Optional<PriceNote> understood = PriceNote.of(words);
            PriceNote said = understood.orElse(PriceNote.NONE);
            odd |= understood.isEmpty()
                    && BreakText.of(words).isEmpty()
                    && (DOUBTFUL.matcher(words).find() || ListWords.speaksOfCost(words));
            note = note.equals(PriceNote.NONE) ? said : note;
            insideBreak = said.equals(PriceNote.NONE) ? BreakText.of(words).orElse(insideBreak) : insideBreak;
        }
        BreakText alone = BreakText.of(main).orElse(null);
        if (alone != null) {
            return Optional.of(broken(alone, note, main));
        }
        PriceNote said = note;
        Optional<HeaderReading> read =
                byWords(main, note, insideBreak).or(() -> words(main, said)).or(() -> byBasis(main));
        return odd && read.filter(HeaderReading::isPrice).isPresent() ? Optional.of(cost(header)) : read;
    }

    /** Whether the column can hold prices. */
    boolean isPrice() {
        return use == null ? doubt == Doubt.QUANTITY || doubt == Doubt.VAT : use.meaning() == Meaning.PRICE;
    }

    /** A header that begins with a known word: {@code Preis ab 25 kg}, {@code Price EUR/kg}, {@code Pack (kg)}. */
    private static Optional<HeaderReading> byWords(String main, PriceNote inside, @Nullable BreakText insideBreak) {
        String[] words = main.split(" ", -1);
        for (int end = words.length; end > 0; end--) {
            String first = String.join(" ", List.of(words).subList(0, end));
            String rest = String.join(" ", List.of(words).subList(end, words.length));
            boolean known =
                    isWord(words[end - 1]) && !CURRENCY_SIGN.matcher(first).find();
            String kind = known ? ListWords.header(first).orElse("") : "";
            Optional<HeaderReading> reading = kind.isEmpty()
                    ? Optional.empty()
                    : ofKind(kind, rest, inside, insideBreak, first.indexOf('%') >= 0);
            if (reading.isPresent()) {
                return reading;
            }
        }
        return Optional.empty();
    }

    /** Keys of words have no such signs: {@code Preis €/kg} is not only {@code Preis/kg}. */
    private static final Pattern CURRENCY_SIGN = Pattern.compile("\\p{Sc}");

    private static boolean isWord(String word) {
        return word.codePoints().anyMatch(letter -> Character.isLetterOrDigit(letter) || letter == '%');
    }

    private static Optional<HeaderReading> ofKind(
            String kind, String rest, PriceNote inside, @Nullable BreakText insideBreak, boolean saysPercent) {
        boolean basis = kind.equals(Meaning.PER.word());
        if (kind.startsWith(Meaning.PRICE.word()) && !basis) {
            return priced(kind, rest, inside, insideBreak);
        }
        Optional<HeaderReading> other = otherKind(kind, rest, inside);
        if (other.isPresent()) {
            return other;
        }
        if (kind.equals(Meaning.DISCOUNT.word()) && !saysPercent) {
            return Optional.of(cost(rest));
        }
        boolean understood = rest.isEmpty() || (!basis && PriceNote.of(rest).isPresent());
        return understood
                ? Meaning.of(kind).map(meaning -> sure(ColumnUse.of(meaning), noteOf(rest, inside)))
                : Optional.empty();
    }

    /** Headers of costs, of validity, and of what is not needed. */
    private static Optional<HeaderReading> otherKind(String kind, String rest, PriceNote inside) {
        PriceNote note = rest.isEmpty() ? inside : PriceNote.of(rest).orElse(null);
        boolean clear = note != null;
        return switch (kind) {
            case "not needed", "old price" ->
                clear ? Optional.of(sure(ColumnUse.of(Meaning.NOTHING), PriceNote.NONE)) : Optional.empty();
            case "validity" ->
                clear
                        ? Optional.of(new HeaderReading(
                                null, PriceNote.NONE, List.of("valid until", "quoted on", "nothing"), Doubt.VALIDITY))
                        : Optional.empty();
            case "surcharge" -> {
                boolean per = note != null && note.saysWhatFor();
                yield Optional.of(per && note != null ? sure(ColumnUse.surcharge(note), note) : cost(rest));
            }
            default -> Optional.empty();
        };
    }

    private static PriceNote noteOf(String rest, PriceNote inside) {
        return rest.isEmpty() ? inside : PriceNote.of(rest).orElse(inside);
    }

    private static Optional<HeaderReading> priced(
            String kind, String rest, PriceNote inside, @Nullable BreakText insideBreak) {
        PriceNote note = switch (kind) {
            case "price per pack" -> new PriceNote(inside.currency(), null, true, null);
            case "price per kg" -> joined(PriceNote.of("per kg").orElseThrow(), inside);
            default -> inside;
        };
        if (rest.isEmpty()) {
            return Optional.of(insideBreak == null ? price(note) : broken(insideBreak, note, ""));
        }
        Optional<PriceNote> said = PriceNote.of(rest);
        if (said.isPresent()) {
            PriceNote joined = joined(said.get(), note);
            return Optional.of(insideBreak == null ? price(joined) : broken(insideBreak, joined, ""));
        }
        Optional<BreakText> from = BreakText.of(rest);
        if (from.isPresent()) {
            return Optional.of(broken(from.get(), note, rest));
        }
        return words(rest, note);
    }

    /** Words after "price" that hold both a basis and a break: {@code Price EUR/kg from 25 kg}. */
    private static Optional<HeaderReading> words(String rest, PriceNote inside) {
        for (int space = rest.indexOf(' '); space > 0; space = rest.indexOf(' ', space + 1)) {
            String first = LAST_COMMA.matcher(rest.substring(0, space)).replaceFirst("");
            String second = rest.substring(space + 1);
            Optional<HeaderReading> read = broken(second, first, inside).or(() -> broken(first, second, inside));
            if (read.isPresent()) {
                return read;
            }
        }
        return Optional.empty();
    }

    private static Optional<HeaderReading> broken(String quantity, String basis, PriceNote inside) {
        return BreakText.of(quantity)
                .flatMap(from -> PriceNote.of(basis).map(said -> broken(from, joined(said, inside), quantity)));
    }

    /** A header that only says what prices are for and in which currency: {@code EUR/kg}. */
    private static Optional<HeaderReading> byBasis(String main) {
        return PriceNote.of(main)
                .filter(note -> note.currency() != null && note.saysWhatFor())
                .map(HeaderReading::price);
    }

    private static HeaderReading broken(BreakText from, PriceNote note, String typed) {
        if (from.kind() == BreakText.Kind.FROM) {
            return sure(ColumnUse.priceFrom(from, note), note);
        }
        String quantity = from.digits()
                + (from.unit() == null ? "" : " " + from.unit().measure().symbol());
        if (from.kind() == BreakText.Kind.ABOVE) {
            return new HeaderReading(null, note, List.of("price from " + quantity, "nothing"), Doubt.QUANTITY);
        }
        return new HeaderReading(
                null,
                note,
                List.of("price from " + quantity, "price of " + (typed.isEmpty() ? quantity : typed), "nothing"),
                Doubt.QUANTITY);
    }

    /** A column of prices; of one pack if the header gives its size: {@code Price per 25 kg drum}. */
    private static HeaderReading price(PriceNote note) {
        Quantity content = note.content();
        return sure(content == null ? ColumnUse.price(note) : ColumnUse.priceOf(content.toString(), note), note);
    }

    private static HeaderReading sure(ColumnUse use, PriceNote note) {
        return new HeaderReading(use, note, List.of(), Doubt.NONE);
    }

    private static PriceNote joined(PriceNote one, PriceNote other) {
        return new PriceNote(
                one.currency() != null ? one.currency() : other.currency(),
                one.saysWhatFor() ? one.per() : other.per(),
                one.saysWhatFor() ? one.pack() : other.pack(),
                one.saysWhatFor() ? one.content() : other.content());
    }
}
