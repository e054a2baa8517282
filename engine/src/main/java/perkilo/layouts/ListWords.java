package perkilo.layouts;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import perkilo.reading.table.PackWords;
import perkilo.xlsx.grid.Csv;

/** The words of price lists in five languages, from {@code words.csv}, and those for packs from {@link PackWords}. */
public final class ListWords {

    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}]+");
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");

    private ListWords() {}

    /** Whether a word or phrase is one of a kind, such as {@code container}. */
    public static boolean is(String kind, String phrase) {
        return KEYS.getOrDefault(kind, Set.of()).contains(key(phrase));
    }

    /** The keys of all words of a kind. */
    static Set<String> keys(String kind) {
        return KEYS.getOrDefault(kind, Set.of());
    }

    /** Whether a text holds a phrase of a kind among its words. */
    public static boolean holds(String kind, String text) {
        String words = spaced(text);
        return PHRASES.computeIfAbsent(kind, ListWords::phrases).stream().anyMatch(words::contains);
    }

    /**
     * Whether some word of these kinds may be in a text, if only as a part of another word; true for every text with
     * one.
     */
    static boolean mayHold(List<String> kinds, String text) {
        String key = key(text.replaceAll("[(\\[][^)\\]]*[)\\]]", "")) + " " + key(text);
        for (String kind : kinds) {
            for (String word : keys(kind)) {
                if (key.contains(word)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The words of a text in small letters without accents and marks, each between spaces. */
    static String spaced(String text) {
        StringBuilder words = new StringBuilder(" ");
        String plain = isAscii(text) ? text.toLowerCase(Locale.ROOT) : withoutAccents(text);
        for (String word : NO_LETTERS.split(plain, -1)) {
            words.append(word).append(word.isEmpty() ? "" : " ");
        }
        return words.toString();
    }

    /** What a header means by its words alone; empty if it is not known. */
    public static Optional<String> header(String phrase) {
        String key = key(phrase);
        return HEADERS.stream()
                .filter(kind -> KEYS.getOrDefault(kind, Set.of()).contains(key))
                .findFirst();
    }

    /** The languages, such as {@code de}, in which a phrase heads a column; none if it is not known. */
    static Set<String> languages(String phrase) {
        return Set.copyOf(LANGUAGES.getOrDefault(key(phrase), Set.of()));
    }

    /** What spellings of a phrase have in common: letters without accents, digits and the per cent sign. */
    public static String key(String phrase) {
        String plain = isAscii(phrase) ? phrase.toLowerCase(Locale.ROOT) : withoutAccents(phrase);
        StringBuilder key = new StringBuilder(plain.length());
        for (int at = 0; at < plain.length(); ) {
            int letter = plain.codePointAt(at);
            if (Character.isLetterOrDigit(letter) || letter == '%') {
                key.appendCodePoint(letter);
            }
            at += Character.charCount(letter);
        }
        return key.length() == 0 ? phrase.strip() : key.toString();
    }

    private static boolean isAscii(String phrase) {
        for (int at = 0; at < phrase.length(); at++) {
            if (phrase.charAt(at) > '~') {
                return false;
            }
        }
        return true;
    }

    /** A text with single spaces, whatever kind of spaces it has. */
    public static String tidy(String text) {
        char before = 'x';
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            boolean odd = letter > '~' && (Character.isSpaceChar(letter) || Character.isWhitespace(letter));
            if (odd || letter < ' ' || (letter == ' ' && before == ' ')) {
                return SPACES.matcher(text).replaceAll(" ").strip();
            }
            before = letter;
        }
        return text.strip();
    }

    private static String withoutAccents(String phrase) {
        return MARKS.matcher(Normalizer.normalize(phrase, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT)
                .replace("ß", "ss");
    }

    /** Kinds of words that head columns, the more specific ones first. */
    private static final List<String> HEADERS = List.of(
            "supplier",
            "item",
            "grade",
            "INCI name",
            "CAS number",
            "code",
            "pack unit",
            "pack",
            "price per pack",
            "price per kg",
            "price",
            "price per",
            "from quantity",
            "currency",
            "minimum order",
            "order multiple",
            "duty %",
            "discount %",
            "surcharge %",
            "surcharge",
            "quoted on",
            "valid until",
            "validity",
            "with vat",
            "old price",
            "not needed");

    private static final Map<String, List<String>> WORDS = new HashMap<>();
    private static final Map<String, Set<String>> PHRASES = new ConcurrentHashMap<>();
    private static final Map<String, Set<String>> LANGUAGES = new HashMap<>();
    private static final Set<String> COST_PARTS = new HashSet<>();
    private static final Set<String> COST_WORDS = new HashSet<>();
    private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}\\p{N}%]+");
    private static final int LONG_WORD = 6;
    private static final Map<String, Set<String>> KEYS = load();

    /** Whether a text has a word for money: freight, surcharge, discount, tax, deposit, price, currency. */
    public static boolean speaksOfCost(String text) {
        for (String word : NO_LETTERS.split(text, -1)) {
            String key = word.isEmpty() ? "" : key(word);
            if (COST_WORDS.contains(key)
                    || (key.length() > LONG_WORD && COST_PARTS.stream().anyMatch(key::contains))) {
                return true;
            }
        }
        return false;
    }

    private static Set<String> phrases(String kind) {
        Set<String> phrases = new HashSet<>();
        WORDS.getOrDefault(kind, List.of()).forEach(word -> phrases.add(spaced(word)));
        return phrases;
    }

    private static Map<String, Set<String>> load() {
        Map<String, Set<String>> keys = new HashMap<>();
        for (List<String> row : rows(ListWords.class, "words.csv")) {
            for (String word : row.get(2).split(";", -1)) {
                if (!word.isBlank()) {
                    keys.computeIfAbsent(row.get(0), kind -> new HashSet<>()).add(key(word));
                    if (HEADERS.contains(row.get(0))) {
                        LANGUAGES
                                .computeIfAbsent(key(word), any -> new HashSet<>())
                                .add(row.get(1));
                    }
                    WORDS.computeIfAbsent(row.get(0), kind -> new ArrayList<>()).add(word);
                }
            }
        }
        for (String word : keys.getOrDefault("cost word", Set.of())) {
            COST_WORDS.add(word);
            if (word.length() >= LONG_WORD - 1) {
                COST_PARTS.add(word);
            }
        }
        for (String word : PackWords.all()) {
            keys.computeIfAbsent("container", kind -> new HashSet<>()).add(key(word));
        }
        return keys;
    }

    /**
     * The rows of a data file, without its header.
     *
     * @param owner a class of the package that the file is in
     */
    public static List<List<String>> rows(Class<?> owner, String file) {
        try (InputStream in = owner.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException(file + " is missing from this build");
            }
            List<List<String>> rows = new ArrayList<>();
            for (Csv.Line line : Csv.read(new String(in.readAllBytes(), StandardCharsets.UTF_8), ',')) {
                rows.add(line.fields().stream().map(Csv.Field::text).toList());
            }
            return rows.subList(1, rows.size());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
