package perkilo.pricelists;

import perkilo.origin.Origin;

/**
 * A row that is not read because something is wrong with it.
 *
 * @param key tells it apart on a review
 * @param where the cell
 * @param why what is wrong
 * @param said what a person said, such as {@link #IGNORE}; empty for nothing
 * @param remark where that is known from; empty for nothing
 */
public record RowNotRead(String key, Origin where, String why, String said, String remark) {

    /** What a person says of a column or row that is not needed. */
    public static final String IGNORE = "ignore";

    /** Whether the list can be taken in without it. */
    public boolean isIgnored() {
        return said.equalsIgnoreCase(IGNORE);
    }
}
