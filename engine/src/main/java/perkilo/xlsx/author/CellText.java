package perkilo.xlsx.author;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text in a form that a cell can hold. */
final class CellText {

    /** The most characters that office suites keep in a cell. */
    private static final int LONGEST = 32_767;

    /** The beginning of what a file would read as an escaped character. */
    private static final Pattern LIKE_A_CODE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private CellText() {}

    /** Whether an office suite would read the words as a formula if a person typed them. */
    static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0;
    }

    /** The words without characters that XML cannot hold, cut if they are too long. */
    static String storable(String text) {
        String kept = writable(text);
        int length = Math.min(kept.length(), LONGEST);
        boolean splitsPair = length < kept.length() && Character.isHighSurrogate(kept.charAt(length - 1));
        String cut = kept.substring(0, splitsPair ? length - 1 : length);
        return cut.contains("_x") ? LIKE_A_CODE.matcher(cut).replaceAll(Matcher.quoteReplacement("_x005F_")) : cut;
    }

    /** The words without characters that XML cannot hold. */
    static String writable(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().filter(CellText::isStorable).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    /** Whether all characters are one {@code char} each and can be held by XML. */
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
