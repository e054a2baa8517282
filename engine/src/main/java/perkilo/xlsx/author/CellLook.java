package perkilo.xlsx.author;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;

/**
 * Everything that decides what a cell looks like.
 *
 * @param look what the cell is for
 * @param format how its number is shown
 * @param quoted whether it holds words that an office suite would read as a formula once they are edited
 * @param wrapped whether its words run over several lines
 * @param linked whether a click leads to another cell
 * @param place how its words are aligned
 */
record CellLook(Look look, NumberFormat format, boolean quoted, boolean wrapped, boolean linked, Place place) {

    /** How words are aligned in their cell. */
    enum Place {
        /** As the office suite aligns them: words left, numbers right. */
        USUAL,
        /** Right, like the numbers below them. */
        RIGHT,
        /** Left, like the words of the lines around it. */
        LEFT,
        /** Left, with a small gap to the number beside them. */
        INDENTED
    }

    /** Explicit: a generated equals and hashCode cost milliseconds at start-up (see engine/docs/measurements.md). */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CellLook same
                && look == same.look
                && quoted == same.quoted
                && wrapped == same.wrapped
                && linked == same.linked
                && place == same.place
                && format.equals(same.format);
    }

    @Override
    public int hashCode() {
        return Objects.hash(look, format, quoted, wrapped, linked, place);
    }
}
