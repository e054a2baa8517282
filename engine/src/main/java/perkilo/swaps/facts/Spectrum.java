package perkilo.swaps.facts;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.names.Names;

/** What a preservative protects against. */
public final class Spectrum {

    private static final String POSITIVE = "gram-positive bacteria";
    private static final String NEGATIVE = "gram-negative bacteria";
    private static final String YEAST = "yeast";
    private static final String MOULD = "mould";

    private Spectrum() {}

    /** The groups of microbes; words that name none of the four are kept as typed. None if nothing is known. */
    public static Set<String> of(Material material) {
        Set<String> groups = new LinkedHashSet<>();
        material.traits().words(Fact.SPECTRUM).forEach(word -> groups.addAll(groups(word)));
        return groups;
    }

    /** What one spectrum has and the other has not. */
    public static List<String> lost(Set<String> from, Set<String> to) {
        return from.stream().filter(group -> !to.contains(group)).toList();
    }

    private static List<String> groups(String word) {
        return switch (Names.withoutMarks(word)) {
            case "bacteria", "grampositiveandgramnegativebacteria" -> List.of(POSITIVE, NEGATIVE);
            case "grampositivebacteria", "grampositive", "gram+", "gram+bacteria" -> List.of(POSITIVE);
            case "gramnegativebacteria", "gramnegative" -> List.of(NEGATIVE);
            case "fungi" -> List.of(YEAST, MOULD);
            case "yeast", "yeasts" -> List.of(YEAST);
            case "mould", "moulds", "mold", "molds" -> List.of(MOULD);
            default -> List.of(Names.key(word));
        };
    }
}
