package perkilo.xlsx.author;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words as a cell can hold them. */
final class CellText {

    /** The most characters that office suites keep in a cell. */
    private static final int LONGEST = 32_767;

    /** What a file would take for a character written as its number. */
    private static final Pattern LIKE_A_CODE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private CellText() {}

    /** Whether an office suite would take the words for a formula if a person typed them. */
    static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0;
    }

    /** The words without characters that no XML can hold, cut where they are too long. */
    static String storable(String text) {
        String kept = writable(text);
        int length = Math.min(kept.length(), LONGEST);
        boolean splitsPair = length < kept.length() && Character.isHighSurrogate(kept.charAt(length - 1));
        String cut = kept.substring(0, splitsPair ? length - 1 : length);
        return cut.contains("_x") ? LIKE_A_CODE.matcher(cut).replaceAll(Matcher.quoteReplacement("_x005F_")) : cut;
    }

    /** The words without characters that no XML can hold. */
    static String writable(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().filter(CellText::isStorable).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    /** Whether there are none but characters of one {@code char} each that every XML can hold. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (!isStorable(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isStorable(int character) {
        boolean control = character < ' ' && character != '\n' && character != '\t';
        boolean loneSurrogate = character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
        return !control && !loneSurrogate && character != 0xFFFE && character != 0xFFFF;
    }
}
