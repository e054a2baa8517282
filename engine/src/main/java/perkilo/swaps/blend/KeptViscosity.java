package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.List;
import perkilo.origin.Figure;

/**
 * The rule that the viscosity of the blended oils stays within a factor, as far as it is known; oils of unknown
 * viscosity do not become more.
 *
 * <p>By the mixing rule of Arrhenius (1887), with weights in place of mole fractions: {@code ln η = Σ w · ln η_i}. It
 * is guidance: mixtures do not follow it closely.
 */
final class KeptViscosity implements Keeps {

    /** By how much the blend may become thicker or thinner. Own choice. */
    private static final double FACTOR = 1.5;

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double known = rows.now(one -> isKnown(one) ? 1 : 0);
        rows.between(Double.NEGATIVE_INFINITY, one -> isKnown(one) ? 0 : 1, rows.now(one -> isKnown(one) ? 0 : 1));
        if (known <= 0) {
            return;
        }
        double mean = rows.now(one -> above(one, 0)) / known;
        double band = Math.log(FACTOR);
        rows.between(Double.NEGATIVE_INFINITY, one -> above(one, mean + band), 0);
        rows.between(0, one -> above(one, mean - band), Double.POSITIVE_INFINITY);
    }

    private static boolean isKnown(Ingredient one) {
        Figure viscosity = one.material().traits().viscosity();
        return viscosity != null && viscosity.value().signum() > 0;
    }

    /** How far the logarithm of the viscosity lies above a value; zero where it is not known. */
    private static double above(Ingredient one, double value) {
        Figure viscosity = one.material().traits().viscosity();
        return viscosity == null || viscosity.value().signum() <= 0
                ? 0
                : Math.log(viscosity.value().doubleValue()) - value;
    }

    @Override
    public String words() {
        return KeptMessages.viscosity(BigDecimal.valueOf(FACTOR));
    }
}
