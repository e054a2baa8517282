package perkilo.xlsx.grid;

import java.util.regex.Pattern;

/** Spaces of every kind, also those that a spreadsheet or a web page leaves unseen. */
final class Spaces {

    private static final Pattern INVISIBLE = Pattern.compile("[\\u200B\\u2060\\uFEFF]");
    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}]+");

    private Spaces() {}

    /** Without spaces and invisible characters at both ends; those inside stay, spaces in a row as one. */
    static String strip(String text) {
        return isTidy(text) ? text : tidied(text);
    }

    /** Whether nothing but spaces and invisible characters is there. */
    static boolean isBlank(String text) {
        boolean plain = !text.isEmpty() && text.charAt(0) > ' ' && text.charAt(0) < 0x7F;
        return !plain && strip(text).isEmpty();
    }

    /** Most cells hold a word or two of plain letters, with nothing to be stripped. */
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
