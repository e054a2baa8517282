package perkilo.swaps;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.origin.Finding;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.money.LinePrices;

/** Materials that can't come into any swap, whatever the line: said once, not on each line. */
final class NoCandidates {

    /** More names than this are counted only. */
    private static final int SHOWN = 20;

    private NoCandidates() {}

    static List<Finding> notes(Book book, LinePrices prices) {
        List<Finding> notes = new ArrayList<>();
        note(
                notes,
                book,
                material -> Functions.of(material).isEmpty(),
                "no function is known of these materials, so nothing replaces them and they replace nothing");
        note(
                notes,
                book,
                material -> !Functions.of(material).isEmpty() && !prices.isAvailable(material),
                "nobody offers these materials on the costing date, so they are no candidates");
        return notes;
    }

    private static void note(List<Finding> notes, Book book, Predicate<Material> which, String why) {
        List<Material> materials = book.materials().values().stream()
                .filter(material -> !material.isWater())
                .filter(which)
                .toList();
        if (!materials.isEmpty()) {
            String names = materials.stream().limit(SHOWN).map(Material::name).collect(Collectors.joining(", "));
            String more = materials.size() > SHOWN ? " and %d more".formatted(materials.size() - SHOWN) : "";
            notes.add(Finding.note(materials.get(0).origin(), "%s: %s%s".formatted(why, names, more)));
        }
    }
}
