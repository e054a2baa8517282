package perkilo.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.origin.Finding;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.role.Roles;

/** Checks that the formula, the material and the function of a swap request are in the book. */
final class SwapSubjects {

    private final Path file;
    private final Book book;

    SwapSubjects(Path file, Book book) {
        this.file = file;
        this.book = book;
    }

    /** An error for each that is missing. */
    List<Finding> missing(SwapRequest.Only only) {
        String formula = only.formula();
        String material = only.material();
        String function = only.function();
        List<Finding> missing = new ArrayList<>();
        if (formula != null && book.formula(formula).isEmpty()) {
            missing.add(error(DeskMessages.noFormula(formula)));
        }
        if (material != null && book.material(material).isEmpty()) {
            missing.add(error(noMaterial(material)));
        }
        if (function != null && !isKnown(function)) {
            missing.add(error(noMaterialFor(function)));
        }
        return missing;
    }

    private Finding error(String text) {
        return Finding.error(BookReading.whole(file), text);
    }

    /** Also names the materials that have it as their INCI name, because people may type that. */
    private String noMaterial(String typed) {
        List<String> names = book.materials().values().stream()
                .filter(one -> !one.inci().isEmpty() && Names.key(one.inci()).equals(Names.key(typed)))
                .map(Material::name)
                .toList();
        return names.isEmpty() ? DeskMessages.noMaterial(typed) : DeskMessages.inciOfMaterial(typed, names);
    }

    private boolean isKnown(String function) {
        String glossary = Functions.named(function);
        return book.materials().values().stream()
                .anyMatch(one -> Functions.does(one, glossary)
                        || Roles.named(function)
                                .filter(role -> Roles.plays(one, role))
                                .isPresent());
    }

    /** Names the function that may be meant, or all that the book has. */
    private String noMaterialFor(String function) {
        List<String> known = Functions.words().stream().filter(this::isKnown).toList();
        Optional<String> near = Spelling.nearest(function, known);
        return near.isPresent()
                ? DeskMessages.misspeltFunction(function, near.get())
                : DeskMessages.unknownFunction(function, functionsOf(book));
    }

    private static List<String> functionsOf(Book book) {
        return book.materials().values().stream()
                .map(Functions::work)
                .filter(work -> !work.isEmpty())
                .distinct()
                .sorted()
                .toList();
    }
}
