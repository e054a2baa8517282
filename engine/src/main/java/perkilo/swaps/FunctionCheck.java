package perkilo.swaps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.swaps.facts.Functions;

/** Whether the functions of materials are words that others are known by: a slip takes a material out of all swaps. */
public final class FunctionCheck {

    private static final int NAMED = 4;

    private FunctionCheck() {}

    /** A warning for each word that nearly is one of the glossary, and a note for each that is none. */
    public static List<Finding> of(Book book) {
        Set<String> words = Functions.words();
        Map<String, Unknown> unknown = new LinkedHashMap<>();
        for (Material material : book.materials().values()) {
            for (String function : material.functions()) {
                if (!function.isBlank() && !words.contains(Functions.named(function))) {
                    unknown.computeIfAbsent(Names.key(function), key -> new Unknown(function, new ArrayList<>()))
                            .materials()
                            .add(material);
                }
            }
        }
        return unknown.values().stream().map(one -> finding(one, words)).toList();
    }

    /** A word, and the materials that are said to do what it says. */
    private record Unknown(String function, List<Material> materials) {

        String who() {
            String named = materials.stream()
                    .limit(NAMED)
                    .map(material -> "\"" + material.name() + "\"")
                    .collect(Collectors.joining(", "));
            int more = materials.size() - NAMED;
            return "\"%s\", a function of %s%s, is no word of the EU glossary"
                    .formatted(function, named, more > 0 ? " and %d more".formatted(more) : "");
        }
    }

    private static Finding finding(Unknown unknown, Set<String> words) {
        Optional<String> near = Spelling.nearest(unknown.function(), words);
        Origin origin = unknown.materials().get(0).origin();
        return near.isPresent()
                ? Finding.warning(
                        origin,
                        "%s, so as it stands no other material is compared for it; did you mean \"%s\"?"
                                .formatted(unknown.who(), near.get()))
                : Finding.note(
                        origin, "%s; it is compared with materials of the very same word".formatted(unknown.who()));
    }
}
