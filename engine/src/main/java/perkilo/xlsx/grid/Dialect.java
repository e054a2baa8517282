package perkilo.xlsx.grid;

/**
 * How a text file separates its fields.
 *
 * @param delimiter what is between two fields; one character, or several such as {@code ::}
 * @param quote the mark around fields that contain the delimiter or a line break; it is doubled inside
 * @param backslash whether a backslash makes a mark, a delimiter or a backslash part of the field
 */
record Dialect(String delimiter, char quote, boolean backslash) {

    /** Comma-separated values as in RFC 4180. */
    static final Dialect COMMA = new Dialect(",", '"', false);

    /** Fields with a delimiter of one character, quoted as in RFC 4180. */
    static Dialect of(char delimiter) {
        return new Dialect(String.valueOf(delimiter), '"', false);
    }

    /** Whether the delimiter is at a position. */
    boolean delimits(String text, int at) {
        return delimiter.length() == 1
                ? at < text.length() && text.charAt(at) == delimiter.charAt(0)
                : text.startsWith(delimiter, at);
    }

    /** Whether a field ends at a position: at a delimiter, a line break or the end of the text. */
    boolean endsField(String text, int at) {
        return at >= text.length() || isBreak(text.charAt(at)) || delimits(text, at);
    }

    /** The first position from here on that is not a space, unless spaces separate the fields. */
    int afterSpaces(String text, int from) {
        int at = from;
        if (delimiter.charAt(0) != ' ') {
            while (at < text.length() && text.charAt(at) == ' ') {
                at++;
            }
        }
        return at;
    }

    /** Whether a character ends a line. */
    static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }
}
