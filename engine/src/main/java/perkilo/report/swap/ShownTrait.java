package perkilo.report.swap;

import java.util.function.Function;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.facts.Functions;

/** The trait that matters most for the function of a blend, shown beside its materials. */
enum ShownTrait {
    SPREADING_CLASS,
    MELTING_POINT,
    HLB,
    ACTIVE_MATTER,
    USUAL_MOST;

    private static final NumberFormat ONE_DECIMAL = new NumberFormat("0.0");

    /** The trait for a blend, whose materials all have the same function. */
    static ShownTrait of(Blend blend) {
        Material first = blend.parts().get(0).material();
        return switch (Functions.work(first)) {
            case Functions.EMOLLIENT -> Functions.isSolid(first) ? MELTING_POINT : SPREADING_CLASS;
            case Functions.EMULSIFYING -> HLB;
            case "humectant", "chelating", "cleansing" -> ACTIVE_MATTER;
            default -> USUAL_MOST;
        };
    }

    /** The trait as a column. */
    <R> Column<R> column(Function<R, Material> material) {
        return switch (this) {
            case SPREADING_CLASS -> TraitColumn.spreadingClass(material);
            case MELTING_POINT -> TraitColumn.figure("Melts at, °C", NumberFormat.WHOLE, material, Traits::meltsAtC);
            case HLB -> TraitColumn.figure("HLB", ONE_DECIMAL, material, Traits::hlb);
            case ACTIVE_MATTER -> TraitColumn.figure("Active matter", NumberFormat.PERCENT, material, Traits::active);
            case USUAL_MOST -> TraitColumn.figure("Usual up to", NumberFormat.PERCENT, material, Traits::useMax);
        };
    }
}
