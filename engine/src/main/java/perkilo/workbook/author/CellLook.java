package perkilo.workbook.author;

import perkilo.report.Look;
import perkilo.report.NumberFormat;

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
}
