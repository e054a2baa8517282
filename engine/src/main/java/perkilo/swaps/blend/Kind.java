package perkilo.swaps.blend;

import java.util.Arrays;
import java.util.Optional;
import perkilo.model.Material;
import perkilo.swaps.facts.Functions;

/** Kinds of materials that can be blended anew for a saving, because the rules for such a blend are known. */
enum Kind {
    OILS(Functions.EMOLLIENT, "emollients that spread"),
    BODY(Functions.EMOLLIENT, "solid emollients: fatty alcohols, waxes, butters"),
    EMULSIFIERS(Functions.EMULSIFYING, "emulsifiers"),
    HUMECTANTS("humectant", "humectants"),
    THICKENERS("viscosity controlling", "thickeners"),
    ANTIOXIDANTS("antioxidant", "antioxidants"),
    CHELATORS("chelating", "chelators"),
    SURFACTANTS("cleansing", "surfactants");

    private final String work;
    private final String title;

    Kind(String work, String title) {
        this.work = work;
        this.title = title;
    }

    /** The name of the kind on a sheet. */
    String title() {
        return title;
    }

    /** The main function of its materials. */
    String work() {
        return work;
    }

    /** Whether its lines count together across phases: emulsifiers work where oil and water meet. */
    boolean acrossPhases() {
        return this == EMULSIFIERS;
    }

    /**
     * The kind of a material; empty if the rules for such a blend are not known, and for every material with the
     * function of a preservative, in any place among its functions.
     */
    static Optional<Kind> of(Material material) {
        if (Functions.does(material, Functions.PRESERVATIVE)) {
            return Optional.empty();
        }
        String work = Functions.work(material);
        if (work.equals(Functions.EMOLLIENT)) {
            return Optional.of(Functions.isSolid(material) ? BODY : OILS);
        }
        return Arrays.stream(values()).filter(kind -> kind.work.equals(work)).findFirst();
    }
}
