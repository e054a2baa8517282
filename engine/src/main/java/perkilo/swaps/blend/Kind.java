package perkilo.swaps.blend;

import java.util.Arrays;
import java.util.Optional;
import perkilo.model.Material;
import perkilo.swaps.facts.Functions;

/** Kinds of materials that can be blended anew for a saving, because what such a blend has to keep is known. */
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

    /** What the kind is called on a sheet. */
    String title() {
        return title;
    }

    /** The function that its materials are there for. */
    String work() {
        return work;
    }

    /** Whether its lines count together in whatever phase they stand; emulsifiers meet where oil and water do. */
    boolean acrossPhases() {
        return this == EMULSIFIERS;
    }

    /**
     * The kind of a material; empty where what a blend of such would have to keep is not known, and for whatever
     * preserves as well, be it first or last among its functions.
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
