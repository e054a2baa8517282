package perkilo.swaps;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.origin.Finding;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.role.Roles;

/** The materials that cannot be in any swap: one note for all lines. */
final class NoCandidates {

    /** Names in a note; the other materials are only counted. */
    private static final int SHOWN = 20;

    private NoCandidates() {}

    static List<Finding> notes(Book book, LinePrices prices) {
        List<Finding> notes = new ArrayList<>();
        note(notes, book, material -> Roles.of(material).isEmpty(), SwapMessages::withoutRole);
        note(
                notes,
                book,
                material -> !Roles.of(material).isEmpty() && !prices.isAvailable(material),
                SwapMessages::notOffered);
        return notes;
    }

    private static void note(
            List<Finding> notes,
            Book book,
            Predicate<Material> which,
            BiFunction<List<String>, Integer, String> words) {
        List<Material> materials = book.materials().values().stream()
                .filter(material -> !material.isWater())
                .filter(which)
                .toList();
        if (!materials.isEmpty()) {
            List<String> named =
                    materials.stream().limit(SHOWN).map(Material::name).toList();
            int more = materials.size() - named.size();
            notes.add(Finding.note(materials.get(0).origin(), words.apply(named, more)));
        }
    }
}
