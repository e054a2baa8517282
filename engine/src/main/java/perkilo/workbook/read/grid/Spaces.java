package perkilo.workbook.read.grid;

import java.util.regex.Pattern;

/** Spaces of every kind, also those that a spreadsheet or a web page leaves unseen. */
final class Spaces {

    private static final Pattern INVISIBLE = Pattern.compile("[\\u200B\\u2060\\uFEFF]");
    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}]+");

    private Spaces() {}

    /** Without spaces and invisible characters at both ends; those inside stay, spaces in a row as one. */
    static String strip(String text) {
        if (isPlain(text)) {
            return text;
        }
        String visible = INVISIBLE.matcher(text).replaceAll("");
        return SPACES.matcher(visible).replaceAll(" ").strip();
    }

    /** Whether a text needs no tidying: printable ASCII, single spaces inside alone. Most cells are, and are many. */
    private static boolean isPlain(String text) {
        char before = ' ';
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            if (letter < ' ' || letter > '~' || (letter == ' ' && before == ' ')) {
                return false;
            }
            before = letter;
        }
        return !text.endsWith(" ");
    }
}
