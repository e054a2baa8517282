package perkilo.model;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * A raw material.
 *
 * @param name as typed
 * @param inci its name in the ingredient list; empty if unknown
 * @param functions what it does in a formula, in the words of the EU glossary; may be none
 * @param density in g/mL; null if unknown
 * @param housePrice in home currency for one kilogram, if it is made in the house; null for none
 * @param handlingLoss what sticks to drums and scoops, as a fraction of what is weighed; below one
 * @param shelfLifeMonths from arrival; null if unknown
 * @param safetyStock kilograms that are always to be there; null for none
 * @param traits properties for comparing it with others
 * @param origin its row
 */
public record Material(
        String name,
        String inci,
        List<String> functions,
        @Nullable Figure density,
        @Nullable Figure housePrice,
        Figure handlingLoss,
        @Nullable Figure shelfLifeMonths,
        @Nullable Figure safetyStock,
        Traits traits,
        Origin origin) {

    /** Process water, by its names in ingredient lists: INCI, American, and French as in Canada. */
    private static final Set<String> WATER = Set.of("aqua", "water", "eau");

    /** Process water, as people name it in their formulas. */
    private static final Set<String> WATER_OF_FORMULAS = Set.of("wasser", "acqua", "agua");

    /** How such water is treated, in words beside its name; words of the trade, common practice, no source. */
    private static final Set<String> TREATED = Set.of(
            "dest",
            "destilliert",
            "destilliertes",
            "demin",
            "demineralisiert",
            "demineralisiertes",
            "vollentsalzt",
            "vollentsalztes",
            "ve",
            "gereinigt",
            "gereinigtes",
            "deionised",
            "deionized",
            "demineralised",
            "demineralized",
            "distilled",
            "purified",
            "di",
            "ro",
            "distillée",
            "distillee",
            "déminéralisée",
            "demineralisee",
            "purifiée",
            "purifiee",
            "destilada",
            "desionizada",
            "desmineralizada",
            "purificada",
            "distillata",
            "demineralizzata",
            "deionizzata",
            "depurata",
            "purificata",
            "osmose",
            "abgekocht");

    public Material {
        functions = List.copyOf(functions);
    }

    /** A material without safety stock. */
    public Material(
            String name,
            String inci,
            List<String> functions,
            @Nullable Figure density,
            @Nullable Figure housePrice,
            Figure handlingLoss,
            @Nullable Figure shelfLifeMonths,
            Traits traits,
            Origin origin) {
        this(name, inci, functions, density, housePrice, handlingLoss, shelfLifeMonths, null, traits, origin);
    }

    /** A material of which only the name is known. */
    public static Material of(String name) {
        return new Material(name, "", List.of(), null, null, Figure.ZERO, null, Traits.UNKNOWN, Origin.NONE);
    }

    /** Whether nothing is known of its properties. */
    public boolean isNameAlone() {
        return inci.isEmpty() && functions.isEmpty() && !traits.isAnyKnown();
    }

    /**
     * Whether this is water: its INCI name is water in one or several languages of labels; without an INCI name, its
     * own name decides.
     */
    public boolean isWater() {
        return inci.isBlank() ? isWaterOfLabels(name) || isWaterOfFormulas(Names.key(name)) : isWaterOfLabels(inci);
    }

    /** Whether all words mean water, or how it is treated: {@code dest. Wasser}. */
    private static boolean isWaterOfFormulas(String key) {
        if (WATER_OF_FORMULAS.contains(key)) {
            return true;
        }
        boolean mayBe = key.contains("wa") || key.contains("acqua") || key.contains("aqua") || key.contains("eau");
        if (!mayBe && !key.contains("agua")) {
            return false; // nearly all materials; called very often
        }
        boolean water = false;
        int from = 0;
        for (int at = 0; at <= key.length(); at++) {
            if (at < key.length() && Character.isLetter(key.charAt(at))) {
                continue;
            }
            String word = key.substring(from, at);
            boolean named = WATER.contains(word) || WATER_OF_FORMULAS.contains(word);
            if (!word.isEmpty() && !named && !TREATED.contains(word)) {
                return false;
            }
            water |= named;
            from = at + 1;
        }
        return water;
    }

    /** Whether a name of an ingredient list means water, in one or several languages of labels. */
    public static boolean isWaterOfLabels(String ingredient) {
        String key = Names.key(ingredient);
        return WATER.contains(key) || isWaterInSeveralLanguages(key);
    }

    private static boolean isWaterInSeveralLanguages(String key) {
        if (!key.startsWith("aqua") && !key.startsWith("water") && !key.startsWith("eau")) {
            return false; // nearly all materials; called very often
        }
        for (String word : key.split("[ /(),]+", 0)) {
            if (!WATER.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
