package perkilo.swaps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.swaps.facts.Functions;

/** The check of functions against the EU glossary. */
public final class FunctionCheck {

    private static final int NAMED = 4;

    private FunctionCheck() {}

    /** A warning for each word that is close to a term of the glossary, and a note for each other unknown word. */
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

    /** A word that is not a term, and the materials that have it as a function. */
    private record Unknown(String function, List<Material> materials) {

        List<String> named() {
            return materials.stream().limit(NAMED).map(Material::name).toList();
        }

        int more() {
            return Math.max(0, materials.size() - NAMED);
        }
    }

    private static Finding finding(Unknown unknown, Set<String> words) {
        Optional<String> near = Spelling.nearest(unknown.function(), words);
        Origin origin = unknown.materials().get(0).origin();
        return near.isPresent()
                ? Finding.warning(
                        origin,
                        SwapMessages.misspelledFunction(
                                unknown.function(), unknown.named(), unknown.more(), near.get()))
                : Finding.note(origin, SwapMessages.ownFunction(unknown.function(), unknown.named(), unknown.more()));
    }
}
