package perkilo.model;

import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;

/**
 * What a person says of a formula's line, for swaps.
 *
 * @param role what its material is in the formula for; empty if not stated
 * @param keep whether it stays as it is; null if not stated
 * @param origin the cell of the role
 */
public record LineWish(String role, @Nullable Boolean keep, Origin origin) {

    /** Nothing is said. */
    public static final LineWish NONE = new LineWish("", null, Origin.NONE);
}
