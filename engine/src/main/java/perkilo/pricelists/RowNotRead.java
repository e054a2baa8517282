package perkilo.pricelists;

import java.util.List;
import perkilo.origin.Origin;

/**
 * A row that is not read because something is wrong with it.
 *
 * @param key tells it apart on a review
 * @param where the cell
 * @param why what is wrong
 * @param said what a person said, such as {@link #IGNORE}; empty for nothing
 * @param remark where that is known from; empty for nothing
 * @param choices what a person can choose; they may type what the cell shall say too
 * @param settled whether what a person typed is read in its place
 */
public record RowNotRead(
        String key, Origin where, String why, String said, String remark, List<String> choices, boolean settled) {

    public RowNotRead {
        choices = List.copyOf(choices);
    }

    /** What a person says of a column or row that is not needed. */
    public static final String IGNORE = "ignore";

    /** Whether the list waits for an answer about it. */
    public boolean isOpen() {
        return !settled && !isIgnored();
    }

    /** Whether the list can be taken in without it. */
    public boolean isIgnored() {
        return said.equalsIgnoreCase(IGNORE);
    }
}
