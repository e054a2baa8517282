package perkilo.swaps.facts;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;

/**
 * The functions of materials: why a material is in a formula.
 *
 * <p>Materials list their functions in the terms of the EU glossary, the most usual first. Terms that nearly every
 * material has ({@code functions.csv}: solvent, skin conditioning …) do not say why a material is there: its
 * <em>work</em> is the first term that does.
 */
public final class Functions {

    /** The work of materials that keep microbes from growing. */
    public static final String PRESERVATIVE = "preservative";

    /** The work of oils that soften the skin. */
    public static final String EMOLLIENT = "emollient";

    /** The work of materials that keep oil and water together. */
    public static final String EMULSIFYING = "emulsifying";

    /** The work of materials that colour. */
    public static final String COLORANT = "cosmetic colorant";

    /** The work of fragrances. */
    public static final String PERFUMING = "perfuming";

    /** Room temperature, in °C. Common practice. */
    private static final BigDecimal ROOM = new BigDecimal(25);

    private static final Set<String> ACCOMPANYING = FactTable.read(Functions.class, "functions.csv").stream()
            .map(row -> row.get(0))
            .collect(Collectors.toUnmodifiableSet());

    private static final Map<String, String> WORDS = FactTable.read(Functions.class, "function-words.csv").stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.get(0), row -> row.get(1)));

    private static final Set<String> GLOSSARY = FactTable.read(Functions.class, "function-glossary.csv").stream()
            .map(row -> row.get(0))
            .collect(Collectors.toUnmodifiableSet());

    private Functions() {}

    /** All terms of the glossary, and all other words for them, as they are compared. */
    public static Set<String> words() {
        Set<String> all = new TreeSet<>(GLOSSARY);
        all.addAll(WORDS.keySet());
        return all;
    }

    /** The glossary's term for a function as a person types it: {@code emulsifying} for {@code Emulsifier}. */
    public static String named(String asked) {
        String key = Names.key(asked);
        return WORDS.getOrDefault(key, key);
    }

    /**
     * Whether a function is the work of a material; for a term that nearly every material has, whether it is among its
     * functions.
     */
    public static boolean isThereFor(Material material, String function) {
        return work(material).equals(function) || (ACCOMPANYING.contains(function) && does(material, function));
    }

    /** All functions of a material in the glossary's terms; other words as they are compared. */
    public static List<String> of(Material material) {
        return material.functions().stream()
                .map(Functions::named)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** The work of a material; empty if no function is known. */
    public static String work(Material material) {
        List<String> all = of(material);
        return all.stream()
                .filter(word -> !ACCOMPANYING.contains(word))
                .findFirst()
                .orElse(all.isEmpty() ? "" : all.get(0));
    }

    /** The other functions of a material, without the terms that nearly every material has. */
    public static List<String> besides(Material material, String work) {
        return of(material).stream()
                .filter(word -> !word.equals(work) && !ACCOMPANYING.contains(word))
                .toList();
    }

    /** Whether a material is known to be solid at room temperature, by its melting point. */
    public static boolean isSolid(Material material) {
        Figure melts = material.traits().meltsAtC();
        return melts != null && melts.value().compareTo(ROOM) > 0;
    }

    /** Whether a material has a function. */
    public static boolean does(Material material, String work) {
        return of(material).contains(named(work));
    }
}
