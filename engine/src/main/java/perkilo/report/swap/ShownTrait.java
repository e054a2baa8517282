package perkilo.report.swap;

import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.facts.Functions;

/** The trait that matters most for what a blend does: shown beside its materials. */
enum ShownTrait {
    SPREADING_CLASS("Spreading class"),
    MELTING_POINT("Melts at, °C"),
    HLB("HLB"),
    ACTIVE_MATTER("Active matter"),
    USUAL_MOST("Usual up to");

    private final String words;

    ShownTrait(String words) {
        this.words = words;
    }

    /** The trait as a person reads it. */
    String words() {
        return words;
    }

    /** The trait for a blend, whose materials all do the same work. */
    static ShownTrait of(Blend blend) {
        Material first = blend.parts().get(0).material();
        return switch (Functions.work(first)) {
            case Functions.EMOLLIENT -> Functions.isSolid(first) ? MELTING_POINT : SPREADING_CLASS;
            case Functions.EMULSIFYING -> HLB;
            case "humectant", "chelating", "cleansing" -> ACTIVE_MATTER;
            default -> USUAL_MOST;
        };
    }

    /** Writes the trait of a material, or that it is not known. */
    void write(SheetBuilder sheet, Page page, int row, int column, Material material) {
        if (this == SPREADING_CLASS) {
            String spreading = material.traits().spreadingClass();
            sheet.text(
                    row,
                    column,
                    spreading.isBlank() ? "unknown" : spreading,
                    spreading.isBlank() ? Look.HINT : Look.PLAIN);
            return;
        }
        page.typed(row, column, figure(material.traits()), format());
    }

    private @Nullable Figure figure(Traits traits) {
        return switch (this) {
            case SPREADING_CLASS -> traits.spreadingValue();
            case MELTING_POINT -> traits.meltsAtC();
            case HLB -> traits.hlb();
            case ACTIVE_MATTER -> traits.active();
            case USUAL_MOST -> traits.useMax();
        };
    }

    private NumberFormat format() {
        return switch (this) {
            case ACTIVE_MATTER, USUAL_MOST -> NumberFormat.PERCENT;
            case MELTING_POINT, SPREADING_CLASS -> NumberFormat.WHOLE;
            case HLB -> new NumberFormat("0.0");
        };
    }
}
