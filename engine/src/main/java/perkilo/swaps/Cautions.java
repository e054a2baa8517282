package perkilo.swaps;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.names.Names;
import perkilo.swaps.law.StateOfLaw;

/** Cautions that do not depend on the figures of a swap. */
public final class Cautions {

    /** The cautions on every list of swaps. */
    public static final List<String> ALWAYS = List.of(
            SwapMessages.candidateOnly(),
            SwapMessages.benchBatch(),
            SwapMessages.assessAnew(),
            SwapMessages.claimsStayCosmetic(),
            SwapMessages.traitsFromSheet(),
            StateOfLaw.words());

    private Cautions() {}

    /** Shorter words are no names. */
    private static final int SHORTEST_NAME = 4;

    /** Words in the names of materials that name no material. */
    private static final Set<String> NO_NAMES = Set.of(
            "seed",
            "kernel",
            "butter",
            "refined",
            "golden",
            "white",
            "extract",
            "water",
            "solution",
            "powder",
            "alcohol");

    /**
     * The products that are named after a material that leaves them.
     *
     * @return empty if none is, or the material that enters has the name too
     */
    static Optional<String> givesItsName(Book book, Formula changed, Material leaves, Material enters) {
        String key = Names.key(changed.name());
        Set<String> words = new LinkedHashSet<>(words(leaves.name()));
        words.removeAll(words(enters.name()));
        words.removeIf(word -> word.length() < SHORTEST_NAME || NO_NAMES.contains(word));
        List<String> named = new ArrayList<>();
        for (Product product : book.products().values()) {
            if (Names.key(product.formula()).equals(key)
                    && words(product.name() + ' ' + changed.name()).stream().anyMatch(words::contains)) {
                named.add(product.name());
            }
        }
        return named.isEmpty() ? Optional.empty() : Optional.of(SwapMessages.givesItsName(named, leaves.name()));
    }

    private static List<String> words(String name) {
        return List.of(Names.key(name).split("[ /(),.%-]+", 0));
    }

    /**
     * The other formulas that have a material: what is bought for several formulas may share packs and minimum orders.
     *
     * @param changed the formula that the material would enter
     * @return empty if no other formula of the book has the material
     */
    static Optional<String> boughtAlready(Book book, Formula changed, Material material) {
        String key = Names.key(material.name());
        List<String> others = book.formulas().values().stream()
                .filter(formula -> !Names.key(formula.name()).equals(Names.key(changed.name())))
                .filter(formula -> formula.lines().stream()
                        .anyMatch(line -> Names.key(line.material()).equals(key)))
                .map(Formula::name)
                .toList();
        return others.isEmpty() ? Optional.empty() : Optional.of(SwapMessages.boughtAlready(others));
    }
}
