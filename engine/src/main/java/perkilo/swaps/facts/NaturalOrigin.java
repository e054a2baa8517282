package perkilo.swaps.facts;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;

/**
 * Natural origin content by ISO 16128: the sum of each share of the formula times its index.
 *
 * @param known what is shown to be of natural origin, as a fraction of the formula
 * @param unknown the share of the formula whose index is not known; it may or may not count
 */
public record NaturalOrigin(BigDecimal known, BigDecimal unknown) {

    /** Nothing yet. */
    public static final NaturalOrigin NOTHING = new NaturalOrigin(BigDecimal.ZERO, BigDecimal.ZERO);

    private static final BigDecimal HALF = new BigDecimal("0.5");

    /**
     * The index as it counts: an index of 0.5 or less counts as zero, because a derived natural ingredient must be
     * natural by more than half (ISO 16128-1 and -2, from secondary sources).
     */
    public static BigDecimal counted(BigDecimal index) {
        return index.compareTo(HALF) <= 0 ? BigDecimal.ZERO : index;
    }

    /**
     * This with one more share.
     *
     * @param share of the formula, as a fraction
     * @param index null if not known
     */
    public NaturalOrigin plus(BigDecimal share, @Nullable Figure index) {
        return index == null
                ? new NaturalOrigin(known, unknown.add(share))
                : new NaturalOrigin(known.add(share.multiply(counted(index.value()))), unknown);
    }

    /** Whether the index of every share is known. */
    public boolean isComplete() {
        return unknown.signum() == 0;
    }
}
