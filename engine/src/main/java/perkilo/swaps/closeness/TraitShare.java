package perkilo.swaps.closeness;

import java.math.BigDecimal;

/**
 * What one trait adds to closeness.
 *
 * @param trait as a person reads it
 * @param weight the most it can add
 * @param share what it adds; zero where it is not known
 * @param known whether it is known of both materials
 */
public record TraitShare(String trait, int weight, BigDecimal share, boolean known) {

    /** The share in words: {@code spreading class 25 of 25}, {@code polarity unknown}. */
    @Override
    public String toString() {
        return known
                ? "%s %s of %d".formatted(trait, share.stripTrailingZeros().toPlainString(), weight)
                : "%s unknown".formatted(trait);
    }
}
