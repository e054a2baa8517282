package perkilo.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.swaps.facts.Functions;

/** Whether the formula, the material and the function that swaps are asked for are in the book. */
final class SwapSubjects {

    private final Path file;
    private final Book book;

    SwapSubjects(Path file, Book book) {
        this.file = file;
        this.book = book;
    }

    /** An error for each that is not. */
    List<Finding> missing(SwapRequest.Only only) {
        String formula = only.formula();
        String material = only.material();
        String function = only.function();
        List<Finding> missing = new ArrayList<>();
        if (formula != null && book.formula(formula).isEmpty()) {
            missing.add(error("there is no formula \"%s\"".formatted(formula)));
        }
        if (material != null && book.material(material).isEmpty()) {
            missing.add(error("there is no material \"%s\"%s".formatted(material, withInci(material))));
        }
        if (function != null && !isKnown(function)) {
            missing.add(
                    error("no material is known for the function \"%s\". %s".formatted(function, instead(function))));
        }
        return missing;
    }

    private Finding error(String text) {
        return Finding.error(new Origin(String.valueOf(file.getFileName()), "", ""), text);
    }

    /** Which materials have a name in the ingredient list, as people know that one as well. */
    private String withInci(String inci) {
        String names = book.materials().values().stream()
                .filter(one -> !one.inci().isEmpty() && Names.key(one.inci()).equals(Names.key(inci)))
                .map(Material::name)
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "" : "; that is the INCI name of " + names;
    }

    private boolean isKnown(String function) {
        String glossary = Functions.named(function);
        return book.materials().values().stream().anyMatch(one -> Functions.does(one, glossary));
    }

    /** The word that may be meant, or all that there are. */
    private String instead(String function) {
        List<String> known = Functions.words().stream().filter(this::isKnown).toList();
        Optional<String> near = Spelling.nearest(function, known);
        return near.map("Did you mean %s?"::formatted)
                .orElseGet(() -> "The materials sheet has: %s".formatted(functionsOf(book)));
    }

    private static String functionsOf(Book book) {
        return book.materials().values().stream()
                .map(Functions::work)
                .filter(work -> !work.isEmpty())
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
    }
}
