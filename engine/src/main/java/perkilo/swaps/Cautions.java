package perkilo.swaps;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;

/** What holds for every swap, whatever its figures. */
public final class Cautions {

    /** Said on every list of swaps. */
    public static final List<String> ALWAYS = List.of(
            "A swap is a candidate for the bench, not a release.",
            "Make a bench batch; check pH and viscosity the next day, then stability, preservative efficacy and"
                    + " compatibility with the pack.",
            "The safety assessment has to be done anew by a qualified safety assessor; local rules decide.",
            "Claims stay cosmetic: what a product does to appearance.",
            "Traits are those of the materials sheet; the supplier's specification and certificate decide.");

    private Cautions() {}

    /**
     * Where a material stands already: what is bought for several formulas at once may share packs and minimum orders.
     *
     * @param changed the formula that would take it in
     * @return empty where no other formula of the book holds it
     */
    static Optional<String> boughtAlready(Book book, Formula changed, Material material) {
        String key = Names.key(material.name());
        String others = book.formulas().values().stream()
                .filter(formula -> !Names.key(formula.name()).equals(Names.key(changed.name())))
                .filter(formula -> formula.lines().stream()
                        .anyMatch(line -> Names.key(line.material()).equals(key)))
                .map(formula -> "\"" + formula.name() + "\"")
                .collect(Collectors.joining(", "));
        return others.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "already bought for %s: ordered together it may cost less than here, where each run is planned alone"
                                .formatted(others));
    }
}
