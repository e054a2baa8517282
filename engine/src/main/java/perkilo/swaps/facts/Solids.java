package perkilo.swaps.facts;

import java.math.BigDecimal;
import java.util.Set;
import perkilo.model.Material;
import perkilo.origin.Figure;

/** Whether a material is solid or liquid, and whether its INCI name says what it is. */
public final class Solids {

    /** Room temperature, in °C. Common practice. */
    private static final BigDecimal ROOM = BigDecimal.valueOf(20);

    /** Names in the ingredient list that any mixture of fragrances or flavours may have. */
    private static final Set<String> ANY_SCENT = Set.of("parfum", "aroma", "fragrance", "flavor", "flavour");

    private Solids() {}

    /** Whether a material is known to be liquid at 20 °C: it melts below, or has a viscosity and no melting point. */
    public static boolean isLiquid(Material material) {
        Figure melts = material.traits().meltsAtC();
        return melts == null
                ? material.traits().viscosity() != null
                : melts.value().compareTo(ROOM) <= 0;
    }

    /** Whether a material is known to be solid at 20 °C, by its melting point. */
    public static boolean isSolid(Material material) {
        Figure melts = material.traits().meltsAtC();
        return melts != null && melts.value().compareTo(ROOM) > 0;
    }

    /** Whether an INCI name stands for any fragrance or flavour. */
    public static boolean isAnyScent(String inciKey) {
        return ANY_SCENT.contains(inciKey);
    }
}
