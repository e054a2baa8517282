package perkilo.swaps.blend;

import java.util.List;
import java.util.Optional;
import perkilo.model.Material;
import perkilo.model.Traits;

/** The rule that an emollient is an oil only if a melting point, a viscosity or a spreading class is stated. */
final class KeptLiquid implements Keeps {

    private static boolean isUnknown(Material material) {
        Traits traits = material.traits();
        return traits.meltsAtC() == null
                && traits.viscosity() == null
                && traits.spreadingClass().isBlank();
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        // unknown emollients keep their level or stay out: no row is needed
    }

    @Override
    public Optional<String> keepsOut(Material candidate) {
        return isUnknown(candidate) ? Optional.of(KeptMessages.maybeSolid()) : Optional.empty();
    }

    @Override
    public boolean fixes(Material present) {
        return isUnknown(present);
    }

    @Override
    public String words() {
        return KeptMessages.liquid();
    }
}
