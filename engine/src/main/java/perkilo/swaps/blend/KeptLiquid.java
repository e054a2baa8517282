package perkilo.swaps.blend;

import java.util.List;
import java.util.Optional;
import perkilo.model.Material;
import perkilo.model.Traits;

/** An emollient counts as an oil that spreads only where a melting point, a viscosity or a spreading class says so. */
final class KeptLiquid implements Keeps {

    private static boolean isUnknown(Material material) {
        Traits traits = material.traits();
        return traits.meltsAtC() == null
                && traits.viscosity() == null
                && traits.spreadingClass().isBlank();
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        // what is not known keeps its level or stays out: no row is needed
    }

    @Override
    public Optional<String> keepsOut(Material candidate) {
        return isUnknown(candidate)
                ? Optional.of("whether they are liquid is not known: no melting point, viscosity or spreading class")
                : Optional.empty();
    }

    @Override
    public boolean fixes(Material present) {
        return isUnknown(present);
    }

    @Override
    public String words() {
        return "emollients of unknown melting point, viscosity and spreading class keep their level and do not come in, for they may be solid";
    }
}
