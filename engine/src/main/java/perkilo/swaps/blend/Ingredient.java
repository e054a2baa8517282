package perkilo.swaps.blend;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.model.Names;
import perkilo.origin.Figure;

/**
 * A material that may be in a blend.
 *
 * @param material what it is
 * @param now its level in the blend as it is, as a fraction of the formula; zero for one that is not in it
 * @param least the lowest level at which it may be in, as a fraction of the formula
 * @param most the highest level
 * @param perKg its straight-line price, in home currency
 */
record Ingredient(Material material, BigDecimal now, double least, double most, BigDecimal perKg) {

    /** Whether the blend holds it as it is. */
    boolean isIn() {
        return now.signum() > 0;
    }

    /** How it spreads: its class, or that this is not known. */
    String spreading() {
        String spreading = Names.key(material.traits().spreadingClass());
        return spreading.isEmpty() ? "unknown" : spreading;
    }

    /** What it requires of the emulsifiers; null where not known. */
    @Nullable Double requiredHlb() {
        Figure required = material.traits().requiredHlb();
        return required == null ? null : required.value().doubleValue();
    }
}
