package perkilo.offers;

import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;

/**
 * The terms of a line besides its price.
 *
 * @param minimumOrder the smallest line, in the unit of the pack; null for one pack
 * @param orderMultiple packs are sold in multiples of this, a whole number; null for any number of packs
 * @param duty as a fraction: 0.065 for 6.5 %; null if the supplier's applies
 */
public record LineTerms(
        @Nullable Figure minimumOrder,
        @Nullable Figure orderMultiple,
        @Nullable Figure duty) {

    /** Nothing but the price. */
    public static final LineTerms NONE = new LineTerms(null, null, null);

    /** The terms; those without any are shared, because long lists usually have none. */
    public static LineTerms of(@Nullable Figure minimumOrder, @Nullable Figure orderMultiple, @Nullable Figure duty) {
        return minimumOrder == null && orderMultiple == null && duty == null
                ? NONE
                : new LineTerms(minimumOrder, orderMultiple, duty);
    }
}
