package perkilo.model;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * A raw material.
 *
 * @param name as typed
 * @param inci its name in the ingredient list; empty where not known
 * @param functions what it does in a formula, in the words of the EU glossary; may be none
 * @param density in g/mL; null where not known
 * @param housePrice in home currency for one kilogram, for what is made in the house; null for none
 * @param handlingLoss what sticks to drums and scoops, as a fraction of what is weighed
 * @param shelfLifeMonths from arrival; null where not known
 * @param traits what it is like, for comparing it with others
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
        Traits traits,
        Origin origin) {

    private static final String AQUA = "aqua";

    /** Process water, by its names in ingredient lists: INCI, American, and French as in Canada. */
    private static final Set<String> WATER = Set.of(AQUA, "water", "eau");

    private static final Pattern BETWEEN_NAMES = Pattern.compile("[ /(),]+");

    public Material {
        functions = List.copyOf(functions);
    }

    /** A material of which only the name is known. */
    public static Material of(String name) {
        return new Material(name, "", List.of(), null, null, Figure.ZERO, null, Traits.UNKNOWN, Origin.NONE);
    }

    /**
     * Whether this is water: its INCI name is that of water in the languages of labels, one or several; or its own name
     * is where no INCI name is given.
     */
    public boolean isWater() {
        String key = Names.key(inci.isBlank() ? name : inci);
        if (key.equals(AQUA)) {
            return true;
        }
        for (String word : BETWEEN_NAMES.split(key, 0)) {
            if (!WATER.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
