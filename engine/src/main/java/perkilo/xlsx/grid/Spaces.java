package perkilo.xlsx.grid;

import java.util.regex.Pattern;

/** Spaces of every kind, including the invisible characters of spreadsheets and web pages. */
final class Spaces {

    private static final Pattern INVISIBLE = Pattern.compile("[\\u200B\\u2060\\uFEFF]");
    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}]+");

    private Spaces() {}

    /** The text without spaces and invisible characters at both ends; inside, a row of spaces becomes one. */
    static String strip(String text) {
        return isTidy(text) ? text : tidied(text);
    }

    /** Whether the text holds only spaces and invisible characters. */
    static boolean isBlank(String text) {
        boolean plain = !text.isEmpty() && text.charAt(0) > ' ' && text.charAt(0) < 0x7F;
        return !plain && strip(text).isEmpty();
    }

    /** Whether the text is plain letters with single spaces, as in most cells, so that nothing has to be stripped. */
    private static boolean isTidy(String text) {
        boolean space = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean plain = (c > ' ' && c < 0x7F) || (c == ' ' && !space);
            if (!plain) {
                return false;
            }
            space = c == ' ';
        }
        return text.isEmpty() || !space;
    }

    private static String tidied(String text) {
        String visible = INVISIBLE.matcher(text).replaceAll("");
        return SPACES.matcher(visible).replaceAll(" ").strip();
    }
}
