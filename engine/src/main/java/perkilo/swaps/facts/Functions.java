package perkilo.swaps.facts;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.model.Material;
import perkilo.model.Names;

/**
 * What a material is in a formula for.
 *
 * <p>Materials list their functions in the words of the EU glossary, the most usual first. Words that stand beside
 * nearly everything ({@code functions.csv}: solvent, skin conditioning …) don't say why a material is there: its
 * <em>work</em> is the first word that does.
 */
public final class Functions {

    /** The work of materials that keep microbes from growing. */
    public static final String PRESERVATIVE = "preservative";

    /** The work of oils that soften the skin. */
    public static final String EMOLLIENT = "emollient";

    /** The work of what keeps oil and water together. */
    public static final String EMULSIFYING = "emulsifying";

    /** The work of what colours. */
    public static final String COLORANT = "cosmetic colorant";

    private static final Set<String> ACCOMPANYING = FactTable.read(Functions.class, "functions.csv").stream()
            .map(row -> row.get(0))
            .collect(Collectors.toUnmodifiableSet());

    private Functions() {}

    /** All functions of a material, as they are compared. */
    public static List<String> of(Material material) {
        return material.functions().stream()
                .map(Names::key)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** The work of a material; empty where no function is known. */
    public static String work(Material material) {
        List<String> all = of(material);
        return all.stream()
                .filter(word -> !ACCOMPANYING.contains(word))
                .findFirst()
                .orElse(all.isEmpty() ? "" : all.get(0));
    }

    /** Whether a material can do a work. */
    public static boolean does(Material material, String work) {
        return of(material).contains(Names.key(work));
    }
}
