package perkilo.swaps.blend;

import java.math.BigDecimal;
import perkilo.model.Material;
import perkilo.names.Names;

/**
 * A material that may be in a blend.
 *
 * @param material what it is
 * @param now its level in the blend as it is, as a fraction of the formula; zero for one that is not in it
 * @param least the lowest level at which it may be in, as a fraction of the formula
 * @param most the highest level
 * @param perKg its straight-line price, in home currency
 * @param home index of the line that it has, or that it would be added after
 */
record Ingredient(Material material, BigDecimal now, double least, double most, BigDecimal perKg, int home) {

    /**
     * The part of its present level that a material keeps at least if it stays: with less it is out, and counts as
     * such. Own choice.
     */
    private static final double SMALLEST_PART = 0.25;

    /** The smallest level that survives rounding to a hundred-thousandth of a per cent. */
    private static final double SMALLEST = 1e-6;

    /** Whether it is in the blend now. */
    boolean isIn() {
        return now.signum() > 0;
    }

    /**
     * The lowest level at which it counts as being in. A material that stays never falls to zero, even if no lowest
     * usual level is known: otherwise it would be gone without counting as going out.
     */
    double lowest() {
        double held = now.doubleValue();
        return Math.max(least, Math.min(held, Math.max(held * SMALLEST_PART, SMALLEST)));
    }

    /** How it spreads; empty if this is not known. */
    String spreading() {
        return Names.key(material.traits().spreadingClass());
    }
}
