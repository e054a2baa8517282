package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Hlb;

/**
 * The rule that the HLB that the oils of the formula require stays within a band, as far as it is known; oils of
 * unknown required HLB do not become more.
 */
final class KeptRequiredHlb implements Keeps {

    private final Hlb all;
    private final double band;

    /**
     * A rule.
     *
     * @param all what all oils of the formula require now
     * @param band how far it may move
     */
    KeptRequiredHlb(Hlb all, double band) {
        this.all = all;
        this.band = band;
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        Optional<BigDecimal> now = all.mean();
        if (now.isEmpty()) {
            return;
        }
        double mean = now.get().doubleValue();
        // the oils outside of the blend: their part of Σ mass · (required − mean ± band) does not move
        double known = rows.now(one -> required(one) == null ? 0 : 1);
        double weighted = rows.now(one -> times(required(one), 1));
        double otherMass = all.mass().doubleValue() - known;
        double other = all.weighted().doubleValue() - weighted - mean * otherMass;
        rows.between(Double.NEGATIVE_INFINITY, one -> away(required(one), mean + band), -(other - band * otherMass));
        rows.between(-(other + band * otherMass), one -> away(required(one), mean - band), Double.POSITIVE_INFINITY);
        double unknown = rows.now(one -> required(one) == null ? 1 : 0);
        rows.between(Double.NEGATIVE_INFINITY, one -> required(one) == null ? 1 : 0, unknown);
    }

    private static double times(@Nullable Double required, double factor) {
        return required == null ? 0 : required * factor;
    }

    private static double away(@Nullable Double required, double from) {
        return required == null ? 0 : required - from;
    }

    private static @Nullable Double required(Ingredient one) {
        Figure required = one.material().traits().requiredHlb();
        return required == null ? null : required.value().doubleValue();
    }

    @Override
    public String words() {
        if (all.mean().isEmpty()) {
            return KeptMessages.requiredHlbUnknown();
        }
        BigDecimal within = BigDecimal.valueOf(band);
        BigDecimal mean = all.mean().get();
        return all.unknown().signum() == 0
                ? KeptMessages.requiredHlb(within, mean)
                : KeptMessages.requiredHlbHalfKnown(within, mean, all.unknown());
    }
}
