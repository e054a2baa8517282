package perkilo.swaps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.Spelling;
import perkilo.origin.Finding;
import perkilo.swaps.facts.Functions;

/** Whether the functions of materials are words that others are known by: a slip takes a material out of all swaps. */
public final class FunctionCheck {

    private FunctionCheck() {}

    /** A warning for each word that nearly is one of the glossary, and a note for each that is none. */
    public static List<Finding> of(Book book) {
        List<Finding> findings = new ArrayList<>();
        Set<String> words = Functions.words();
        for (Material material : book.materials().values()) {
            for (String function : material.functions()) {
                if (!function.isBlank() && !words.contains(Functions.named(function))) {
                    findings.add(unknown(material, function, words));
                }
            }
        }
        return findings;
    }

    private static Finding unknown(Material material, String function, Set<String> words) {
        Optional<String> near = Spelling.nearest(function, words);
        String who = "\"%s\", a function of \"%s\", is no word of the EU glossary".formatted(function, material.name());
        return near.isPresent()
                ? Finding.warning(
                        material.origin(),
                        "%s, so as it stands no other material is compared for it; did you mean \"%s\"?"
                                .formatted(who, near.get()))
                : Finding.note(
                        material.origin(), "%s; it is compared with materials of the very same word".formatted(who));
    }
}
