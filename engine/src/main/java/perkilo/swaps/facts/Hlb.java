package perkilo.swaps.facts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;

/**
 * A weighted mean of HLB values: the required HLB of an oil phase, or the HLB of a blend of emulsifiers.
 *
 * <p>Required HLB of an oil phase {@code = Σ mass · required HLB / Σ mass}; HLB of a blend {@code = Σ mass · HLB / Σ
 * mass} (Griffin 1949). Guidance only: that required HLB adds up was never demonstrated (Pasquali, Taurozzi and Bregni
 * 2008, Int. J. Pharm. 356:44-51).
 *
 * @param weighted sum of mass times HLB
 * @param mass of the materials with a known HLB
 * @param unknown mass of the materials with an unknown HLB
 */
public record Hlb(BigDecimal weighted, BigDecimal mass, BigDecimal unknown) {

    /** Nothing yet. */
    public static final Hlb NOTHING = new Hlb(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);

    /**
     * This with some more.
     *
     * @param more mass
     * @param hlb null if not known
     */
    public Hlb plus(BigDecimal more, @Nullable Figure hlb) {
        return hlb == null
                ? new Hlb(weighted, mass, unknown.add(more))
                : new Hlb(weighted.add(more.multiply(hlb.value())), mass.add(more), unknown);
    }

    /** The mean of the known HLB values; empty if none is known. */
    public Optional<BigDecimal> mean() {
        return mass.signum() == 0 ? Optional.empty() : Optional.of(weighted.divide(mass, MathContext.DECIMAL64));
    }

    /**
     * The share of the high-HLB emulsifier in a blend of two that has a target HLB: {@code (target − low) / (high −
     * low)}.
     *
     * @return empty if the two cannot reach it
     */
    public static Optional<BigDecimal> shareOfHigh(BigDecimal low, BigDecimal high, BigDecimal target) {
        if (high.compareTo(low) <= 0 || target.compareTo(low) < 0 || target.compareTo(high) > 0) {
            return Optional.empty();
        }
        return Optional.of(target.subtract(low).divide(high.subtract(low), MathContext.DECIMAL64));
    }
}
