package perkilo.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;

/**
 * What a material is like, so far as it is known. Null, and an empty text or list, mean: not known.
 *
 * @param active active matter as a fraction of the material as supplied
 * @param solubleIn where it dissolves: oil, water, both …
 * @param maxProcessC the highest temperature it withstands in processing, in °C
 * @param meltsAtC in °C
 * @param charge nonionic, anionic, cationic or amphoteric
 * @param spreadingClass light, medium or heavy
 * @param spreadingValue in mm² in 10 minutes
 * @param viscosity in mPa·s
 * @param requiredHlb of an oil in an oil-in-water emulsion
 * @param hlb of an emulsifier
 * @param useMin lowest usual level in a formula, as a fraction
 * @param useMax highest usual level in a formula, as a fraction
 * @param legalMax highest level the law allows, as a fraction
 * @param phMin lowest pH it works at
 * @param phMax highest pH it works at
 * @param naturalOriginIndex by ISO 16128, 0 to 1
 * @param tags such as vegan, palm-free
 * @param allergens fragrance allergens in it
 */
public record Traits(
        @Nullable Figure active,
        String solubleIn,
        @Nullable Figure maxProcessC,
        @Nullable Figure meltsAtC,
        String charge,
        String spreadingClass,
        @Nullable Figure spreadingValue,
        @Nullable Figure viscosity,
        @Nullable Figure requiredHlb,
        @Nullable Figure hlb,
        @Nullable Figure useMin,
        @Nullable Figure useMax,
        @Nullable Figure legalMax,
        @Nullable Figure phMin,
        @Nullable Figure phMax,
        @Nullable Figure naturalOriginIndex,
        List<String> tags,
        List<Allergen> allergens) {

    /** Nothing is known. */
    public static final Traits UNKNOWN = new Traits(
            null, "", null, null, "", "", null, null, null, null, null, null, null, null, null, null, List.of(),
            List.of());

    public Traits {
        tags = List.copyOf(tags);
        allergens = List.copyOf(allergens);
    }

    /** Whether anything is known. */
    public boolean isAnyKnown() {
        @Nullable Figure[] figures = {
            active,
            maxProcessC,
            meltsAtC,
            spreadingValue,
            viscosity,
            requiredHlb,
            hlb,
            useMin,
            useMax,
            legalMax,
            phMin,
            phMax,
            naturalOriginIndex
        };
        for (Figure figure : figures) {
            if (figure != null) {
                return true;
            }
        }
        boolean words = !solubleIn.isEmpty() || !charge.isEmpty() || !spreadingClass.isEmpty();
        return words || !tags.isEmpty() || !allergens.isEmpty();
    }

    /**
     * A fragrance allergen in a material.
     *
     * @param name its INCI name
     * @param share of the material, as a fraction; null where not known
     */
    public record Allergen(String name, @Nullable Figure share) {}
}
