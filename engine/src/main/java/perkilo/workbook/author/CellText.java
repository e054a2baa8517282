package perkilo.workbook.author;

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
        StringBuilder kept = new StringBuilder(Math.min(text.length(), LONGEST));
        text.codePoints().filter(CellText::isStorable).forEach(kept::appendCodePoint);
        int length = Math.min(kept.length(), LONGEST);
        boolean splitsPair = length < kept.length() && Character.isHighSurrogate(kept.charAt(length - 1));
        kept.setLength(splitsPair ? length - 1 : length);
        return LIKE_A_CODE.matcher(kept).replaceAll(Matcher.quoteReplacement("_x005F_"));
    }

    private static boolean isStorable(int character) {
        boolean control = character < ' ' && character != '\n' && character != '\t';
        boolean loneSurrogate = character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
        return !control && !loneSurrogate && character != 0xFFFE && character != 0xFFFF;
    }
}
