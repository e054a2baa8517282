package perkilo.swaps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.model.Book;
import perkilo.model.Fact;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.role.Roles;

/** The check of typed roles: a word that is no role takes a material out of all swaps. */
public final class RoleCheck {

    private static final int NAMED = 4;

    private RoleCheck() {}

    /** A warning for each word that is not a role, with the nearest role. */
    public static List<Finding> of(Book book) {
        Map<String, Unknown> unknown = new LinkedHashMap<>();
        for (Material material : book.materials().values()) {
            for (String word : material.traits().words(Fact.ROLE)) {
                add(unknown, word, material.name(), material.origin());
            }
        }
        for (Formula formula : book.formulas().values()) {
            for (Formula.Line line : formula.lines()) {
                add(unknown, line.wish().role(), line.material(), line.wish().origin());
            }
        }
        return unknown.values().stream().map(RoleCheck::finding).toList();
    }

    private record Unknown(String word, Origin origin, List<String> materials) {}

    private static void add(Map<String, Unknown> unknown, String word, String material, Origin origin) {
        if (!word.isBlank() && Roles.named(word).isEmpty()) {
            List<String> materials = unknown.computeIfAbsent(
                            Names.key(word), key -> new Unknown(word, origin, new ArrayList<>()))
                    .materials();
            if (!materials.contains(material)) {
                materials.add(material);
            }
        }
    }

    private static Finding finding(Unknown unknown) {
        List<String> named = unknown.materials().stream().limit(NAMED).toList();
        int more = unknown.materials().size() - named.size();
        if (Functions.words().contains(Functions.named(unknown.word()))) {
            return Finding.warning(unknown.origin(), SwapMessages.functionAsRole(unknown.word(), named, more));
        }
        Optional<String> near = Spelling.nearest(unknown.word(), Roles.names());
        return Finding.warning(
                unknown.origin(),
                near.isPresent()
                        ? SwapMessages.misspelledRole(unknown.word(), named, more, near.get())
                        : SwapMessages.noRole(unknown.word(), named, more, Roles.names()));
    }
}
