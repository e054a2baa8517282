package perkilo.swaps;

import java.util.List;
import java.util.Optional;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
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
