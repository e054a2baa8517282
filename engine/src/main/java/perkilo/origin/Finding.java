package perkilo.origin;

import static java.util.Objects.requireNonNull;

/**
 * Something that a person should know about a cell: what was found, what was expected, what to do.
 *
 * @param level how much it matters
 * @param origin the cell
 * @param text one or two sentences in the person's words
 */
public record Finding(Level level, Origin origin, String text) {

    public Finding {
        requireNonNull(level, "level");
        requireNonNull(origin, "origin");
        requireNonNull(text, "text");
    }

    /** What keeps anything from being computed. */
    public static Finding error(Origin origin, String text) {
        return new Finding(Level.ERROR, origin, text);
    }

    /** What a person should look at. */
    public static Finding warning(Origin origin, String text) {
        return new Finding(Level.WARNING, origin, text);
    }

    /** What is good to know. */
    public static Finding note(Origin origin, String text) {
        return new Finding(Level.NOTE, origin, text);
    }

    /** Whether this keeps anything from being computed. */
    public boolean isError() {
        return level == Level.ERROR;
    }

    /** The finding on one line: {@code error Offers!F12: …}. */
    @Override
    public String toString() {
        String where = origin.where();
        return level.word() + (where.isEmpty() ? ": " : " " + where + ": ") + text;
    }
}
