package perkilo.origin;

import static java.util.Objects.requireNonNull;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A message to a person about a cell: what was found, what it means, what to do.
 *
 * @param level its importance
 * @param origin the cell
 * @param text one or two sentences, from a catalogue of messages
 */
public record Finding(Level level, Origin origin, String text) {

    public Finding {
        requireNonNull(level, "level");
        requireNonNull(origin, "origin");
        requireNonNull(text, "text");
    }

    /** A fault that keeps what depends on it from being computed. */
    public static Finding error(Origin origin, String text) {
        return new Finding(Level.ERROR, origin, text);
    }

    /** Something that a person should check. */
    public static Finding warning(Origin origin, String text) {
        return new Finding(Level.WARNING, origin, text);
    }

    /** Something that is useful to know. */
    public static Finding note(Origin origin, String text) {
        return new Finding(Level.NOTE, origin, text);
    }

    /** Whether this keeps anything from being computed. */
    public boolean isError() {
        return level == Level.ERROR;
    }

    /** Explicit: a generated equals and hashCode cost milliseconds at start-up (see engine/docs/measurements.md). */
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
