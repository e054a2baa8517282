package perkilo.offers;

import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;

/**
 * The terms of a line besides its price.
 *
 * @param minimumOrder the smallest line, in the unit of the pack; null for one pack
 * @param orderMultiple packs are sold in multiples of this, a whole number; null for any number of packs
 * @param duty as a fraction: 0.065 for 6.5 %; null if the supplier's applies
 * @param listed how the supplier calls the item
 */
public record LineTerms(
        @Nullable Figure minimumOrder,
        @Nullable Figure orderMultiple,
        @Nullable Figure duty,
        Listed listed) {

    /**
     * How the supplier calls an item.
     *
     * @param article the supplier's number for it; blank if unknown
     * @param name the supplier's own name for it; blank where it is that of the item
     */
    public record Listed(String article, String name) {

        /** Neither is known. */
        public static final Listed UNKNOWN = new Listed("", "");

        /** The same, with what another row of the offer knows besides. */
        public Listed or(Listed other) {
            return new Listed(article.isEmpty() ? other.article : article, name.isEmpty() ? other.name : name);
        }
    }

    /** Nothing but the price. */
    public static final LineTerms NONE = new LineTerms(null, null, null, Listed.UNKNOWN);

    /** The terms; those without any are shared, because long lists usually have none. */
    public static LineTerms of(@Nullable Figure minimumOrder, @Nullable Figure orderMultiple, @Nullable Figure duty) {
        return minimumOrder == null && orderMultiple == null && duty == null
                ? NONE
                : new LineTerms(minimumOrder, orderMultiple, duty, Listed.UNKNOWN);
    }

    /** The same terms of an item that the supplier calls so. */
    public LineTerms listedAs(String article, String name) {
        return article.isEmpty() && name.isEmpty()
                ? this
                : new LineTerms(minimumOrder, orderMultiple, duty, new Listed(article, name));
    }
}
