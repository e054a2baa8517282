package perkilo.workbook.read.grid;

import java.util.SortedSet;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/** What is said of sheets and rows that are hidden, and therefore not read. */
final class HiddenParts {

    private HiddenParts() {}

    /** A hidden sheet that holds something. */
    static Finding sheet(String file, String name) {
        return Finding.warning(
                new Origin(file, name, ""), "this sheet is hidden, so nothing on it is read; unhide it if it counts");
    }

    /**
     * Hidden rows that hold something.
     *
     * @param hidden from one, at least one
     */
    static Finding rows(Origin sheet, SortedSet<Integer> hidden) {
        String which = hidden.size() == 1
                ? "row " + hidden.first() + " is"
                : "%d rows between %d and %d are".formatted(hidden.size(), hidden.first(), hidden.last());
        return Finding.warning(
                sheet, "%s hidden, perhaps by a filter, and not read; show all rows if they count".formatted(which));
    }
}
