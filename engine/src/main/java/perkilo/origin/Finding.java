package perkilo.origin;

import static java.util.Objects.requireNonNull;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

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

    /** Written out, as a record's own takes its milliseconds when it is first asked. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Finding finding
                && level == finding.level
                && origin.equals(finding.origin)
                && text.equals(finding.text);
    }

    @Override
    public int hashCode() {
        return Objects.hash(level, origin, text);
    }

    /** The finding on one line: {@code error Offers!F12: …}. */
    @Override
    public String toString() {
        String where = origin.where();
        return level.word() + (where.isEmpty() ? ": " : " " + where + ": ") + text;
    }
}
