package perkilo.swaps.closeness;

import java.math.BigDecimal;

/**
 * What one fact adds to closeness.
 *
 * @param trait as a person reads it
 * @param weight the most it can add
 * @param share what it adds; zero where it is not known
 * @param known whether it is known of both materials
 * @param replaced what is known of the material that would be replaced; empty for nothing
 * @param candidate what is known of the other; empty for nothing
 */
public record TraitShare(String trait, int weight, BigDecimal share, boolean known, String replaced, String candidate) {

    private static final String UNKNOWN = "unknown";

    /** The share in words: {@code spreading class medium → medium 30 of 30}, {@code polarity polar → unknown}. */
    @Override
    public String toString() {
        String values = (replaced.isEmpty() ? UNKNOWN : replaced) + " → " + (candidate.isEmpty() ? UNKNOWN : candidate);
        String words = trait + (replaced.isEmpty() && candidate.isEmpty() ? (known ? "" : " unknown") : " " + values);
        return known
                ? "%s %s of %d".formatted(words, share.stripTrailingZeros().toPlainString(), weight)
                : "%s, 0 to %d".formatted(words, weight);
    }
}
