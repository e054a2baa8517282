package perkilo.xlsx.author;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;

/**
 * What tells the look of one cell from that of another.
 *
 * @param look what the cell is for
 * @param format how its number is shown
 * @param quoted whether it holds words that an office suite would take for a formula when they are edited
 * @param wrapped whether its words run over several lines
 * @param linked whether a click leads to another cell
 * @param place where its words stand
 */
record CellLook(Look look, NumberFormat format, boolean quoted, boolean wrapped, boolean linked, Place place) {

    /** Where words stand in their cell. */
    enum Place {
        /** As the office suite does it: words at the left, numbers at the right. */
        USUAL,
        /** At the right, as the numbers below them. */
        RIGHT,
        /** A little away from the number at their left. */
        INDENTED
    }

    /** Written out, as a record's own takes its milliseconds when it is first asked. */
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
