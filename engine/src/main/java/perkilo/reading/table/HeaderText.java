package perkilo.reading.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A header as a person typed it: case, spaces and punctuation don't matter, and a unit may follow.
 *
 * @param key letters, digits and the per cent sign, in lower case
 * @param name the key of the text before brackets; empty if there are none
 * @param inside the text in brackets at the end; empty if there are none
 * @param cuts every way to divide it into a name and words after it, the longest name first; words in brackets count
 *     like others: {@code Price per kg (EUR)}
 */
record HeaderText(String key, String name, String inside, List<Cut> cuts) {

    private static final int MOST_WORDS = 8;
    private static final int FIRST_BEYOND_ASCII = 0x80;

    /** The parts of a header. */
    static HeaderText of(String header) {
        String text = header.strip();
        int open = Math.max(text.lastIndexOf('('), text.lastIndexOf('['));
        boolean bracketed = open > 0 && (text.endsWith(")") || text.endsWith("]"));
        if (!bracketed) {
            return new HeaderText(key(text), "", "", cuts(text));
        }
        String before = text.substring(0, open).strip();
        String inside = text.substring(open + 1, text.length() - 1).strip();
        return new HeaderText(key(text), key(before), inside, cuts(before + " " + inside));
    }

    /**
     * The key that all spellings of one header share.
     *
     * @param header as typed
     */
    static String key(String header) {
        StringBuilder key = new StringBuilder(header.length());
        for (int i = 0; i < header.length(); i++) {
            char c = header.charAt(i);
            if (c >= FIRST_BEYOND_ASCII) {
                return anyKey(header);
            }
            if (Character.isLetterOrDigit(c) || c == '%') {
                key.append(Character.toLowerCase(c));
            }
        }
        return key.toString();
    }

    /** A key as people type it on a keyboard without accents. */
    static String withoutAccents(String key) {
        for (int i = 0; i < key.length(); i++) {
            if (key.charAt(i) >= FIRST_BEYOND_ASCII) {
                StringBuilder plain = new StringBuilder(key.length());
                Normalizer.normalize(key.replace("ß", "ss"), Normalizer.Form.NFD)
                        .codePoints()
                        .filter(letter -> Character.getType(letter) != Character.NON_SPACING_MARK)
                        .forEach(plain::appendCodePoint);
                return plain.toString();
            }
        }
        return key;
    }

    private static String anyKey(String header) {
        String lower = Normalizer.normalize(header, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        StringBuilder key = new StringBuilder(lower.length());
        lower.codePoints()
                .filter(letter -> Character.isLetterOrDigit(letter) || letter == '%')
                .forEach(key::appendCodePoint);
        return key.toString();
    }

    /** A unit without brackets after the name: {@code Price USD/kg}, {@code Price per kg}, {@code Price/kg}. */
    private static List<Cut> cuts(String text) {
        List<String> words = words(text);
        List<Cut> cuts = new ArrayList<>();
        if (words.size() > MOST_WORDS) {
            return cuts;
        }
        for (int cut = words.size() - 1; cut > 0; cut--) {
            String name = key(String.join(" ", words.subList(0, cut)));
            String rest = String.join(" ", words.subList(cut, words.size())).replace(" /", "/");
            cuts.add(new Cut(name, rest));
        }
        return cuts;
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean space = Character.isWhitespace(c) || Character.isSpaceChar(c);
            if ((space || c == '/') && word.length() > 0) {
                words.add(word.toString());
                word.setLength(0);
            }
            if (!space) {
                word.append(c);
            }
        }
        if (word.length() > 0) {
            words.add(word.toString());
        }
        return words;
    }

    /**
     * One way to divide a header.
     *
     * @param name the key of the first words
     * @param rest the other words as typed
     */
    record Cut(String name, String rest) {}
}
