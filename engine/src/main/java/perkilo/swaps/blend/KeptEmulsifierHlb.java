package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Hlb;

/**
 * The rule that the HLB of all emulsifiers of the formula stays within a band: around what the oils require, if that is
 * known for all of them and the emulsifiers meet it now; else around its present value. An emulsifier of unknown HLB
 * keeps its level.
 */
final class KeptEmulsifierHlb implements Keeps {

    private final Hlb required;
    private final Hlb emulsifiers;
    private final double band;

    KeptEmulsifierHlb(Hlb required, Hlb emulsifiers, double band) {
        this.required = required;
        this.emulsifiers = emulsifiers;
        this.band = band;
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double middle = middle();
        double known = rows.now(one -> isKnown(one.material()) ? 1 : 0);
        double weighted = rows.now(one -> hlb(one.material(), 0));
        double otherMass = emulsifiers.mass().doubleValue() - known;
        double other = emulsifiers.weighted().doubleValue() - weighted - middle * otherMass;
        rows.between(Double.NEGATIVE_INFINITY, one -> hlb(one.material(), middle + band), -(other - band * otherMass));
        rows.between(-(other + band * otherMass), one -> hlb(one.material(), middle - band), Double.POSITIVE_INFINITY);
    }

    /** How far the HLB lies above a value; zero where it is not known. */
    private static double hlb(Material material, double above) {
        Figure hlb = material.traits().hlb();
        return hlb == null ? 0 : hlb.value().doubleValue() - above;
    }

    private static boolean isKnown(Material material) {
        return material.traits().hlb() != null;
    }

    private double middle() {
        return (isMet() ? required : emulsifiers).mean().orElseThrow().doubleValue();
    }

    /** Whether the emulsifiers meet now what the oils require, within the band. */
    private boolean isMet() {
        Optional<BigDecimal> wanted = required.mean();
        return wanted.isPresent()
                && required.unknown().signum() == 0
                && emulsifiers.mean().orElseThrow().subtract(wanted.get()).abs().doubleValue() <= band;
    }

    @Override
    public Optional<String> keepsOut(Material candidate) {
        return isKnown(candidate) ? Optional.empty() : Optional.of(KeptMessages.hlbUnknown());
    }

    @Override
    public boolean fixes(Material present) {
        return !isKnown(present);
    }

    @Override
    public Optional<String> impossible() {
        return emulsifiers.mean().isPresent() ? Optional.empty() : Optional.of(KeptMessages.noHlbKnown());
    }

    @Override
    public String words() {
        BigDecimal within = BigDecimal.valueOf(band);
        Optional<BigDecimal> wanted = required.mean();
        BigDecimal now = emulsifiers.mean().orElse(BigDecimal.ZERO);
        if (emulsifiers.mean().isPresent() && isMet()) {
            return KeptMessages.emulsifierHlb(within, wanted.orElseThrow(), now);
        }
        String reason = wanted.isEmpty() || required.unknown().signum() > 0
                ? KeptMessages.noBandForUnknown()
                : KeptMessages.requiredHlbTooFar(wanted.get());
        return KeptMessages.emulsifierHlbAsNow(within, now) + " " + reason;
    }
}
