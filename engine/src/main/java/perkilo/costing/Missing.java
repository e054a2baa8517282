package perkilo.costing;

import static java.util.Objects.requireNonNull;

import perkilo.origin.Origin;

/**
 * Something that is not known of a run.
 *
 * @param what in the person's words: an item, a formula, a setting
 * @param part the part of the cost that it belongs to
 * @param why it is not known, in a few words, such as {@code no price}
 * @param origin the cell to look at
 */
public record Missing(String what, Part part, String why, Origin origin) {

    /** A part of the cost of a run. */
    public enum Part {
        MATERIALS,
        PACKAGING,
        WORK,
        /** Nothing of the run is known without it. */
        EVERYTHING
    }

    public Missing {
        requireNonNull(what, "what");
        requireNonNull(part, "part");
        requireNonNull(why, "why");
        requireNonNull(origin, "origin");
    }

    /** What is missing and why, on one line: {@code Jar 50 mL (no price)}. */
    public String words() {
        return what + " (" + why + ")";
    }
}
