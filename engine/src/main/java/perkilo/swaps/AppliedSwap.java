package perkilo.swaps;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * A new formula made from a swap or a blend; the original stays unchanged.
 *
 * @param formula with the change applied, produced like the original, with a name that no other formula has
 * @param original the formula as it is
 * @param materials all materials of the new formula, with what is known of them
 * @param identity the same for the same change of the same formula, whatever its number is
 * @param label what it changes in the list of ingredients
 * @param cautions what a person should check, each in full sentences
 * @param notes where to type its name to cost it, and which price lists that needs
 */
public record AppliedSwap(
        Formula formula,
        Formula original,
        List<Material> materials,
        String identity,
        LabelChange label,
        List<String> cautions,
        List<Finding> notes) {

    public AppliedSwap {
        materials = List.copyOf(materials);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** The names of formulas that earlier runs wrote. */
    @FunctionalInterface
    public interface Earlier {

        /** No earlier run wrote any. */
        Earlier NONE = identity -> Optional.empty();

        /** The formula that holds a change and may be written anew; empty if there is none. */
        Optional<String> name(String identity);
    }

    /**
     * Applies a swap.
     *
     * @param book that it was found in
     * @param number of the swap in its list, from one
     * @param earlier names of formulas that may be written anew
     * @return the formula is named {@code <formula> swap <number>}, or as it was named before
     */
    public static AppliedSwap of(Book book, Swap swap, int number, Earlier earlier) {
        String identity = String.join(
                "|",
                "swap",
                Names.key(swap.formula().name()),
                Integer.toString(swap.trial().line()),
                Names.key(swap.trial().from().name()),
                Names.key(swap.trial().to().name()));
        return of(
                book,
                swap.trial().before(),
                swap.trial().after(),
                "swap " + number,
                identity,
                swap.cautions(),
                earlier);
    }

    /**
     * Applies a blend.
     *
     * @param book that it was found in
     * @param number of the blend in its list, from one
     * @param earlier names of formulas that may be written anew
     * @return the formula is named {@code <formula> blend <number>}, or as it was named before
     */
    public static AppliedSwap of(Book book, Blend blend, int number, Earlier earlier) {
        String identity = String.join(
                "|",
                "blend",
                Names.key(blend.formula().name()),
                blend.phase(),
                blend.function(),
                String.join(",", blend.leaving()),
                String.join(",", blend.entering()),
                blend.pricedAt());
        return of(book, blend.before(), blend.after(), "blend " + number, identity, blend.cautions(), earlier);
    }

    private static AppliedSwap of(
            Book book,
            Recipe before,
            Recipe after,
            String what,
            String identity,
            List<String> cautions,
            Earlier earlier) {
        Formula original = before.formula();
        String name = earlier.name(identity).orElseGet(() -> free(book, original.name() + " " + what));
        Formula applied = new Formula(name, after.formula().lines(), original.batching(), Origin.NONE);
        List<Finding> notes = new ArrayList<>(placesToType(book, original, name));
        notes.addAll(pricedElsewhere(book, original, applied));
        List<Material> materials =
                after.portions().stream().map(Portion::material).toList();
        return new AppliedSwap(applied, original, materials, identity, LabelChange.of(before, after), cautions, notes);
    }

    /** The lines of the new formula, each with what changed in it. */
    public List<ChangedLine> lines() {
        return ChangedLine.of(original, formula);
    }

    /** What went out, each with its level in words. */
    public List<String> out() {
        return ChangedLine.out(original, formula);
    }

    private static String free(Book book, String wanted) {
        String name = wanted;
        for (int copy = 2; book.formula(name).isPresent(); copy++) {
            name = "%s (%d)".formatted(wanted, copy);
        }
        return name;
    }

    /** The user's sheets are never changed, so the user types the new name where the formula is to be costed. */
    private static List<Finding> placesToType(Book book, Formula original, String name) {
        List<Finding> notes = new ArrayList<>();
        String key = Names.key(original.name());
        for (Product product : book.products().values()) {
            if (Names.key(product.formula()).equals(key)) {
                notes.add(Finding.note(product.origin(), SwapMessages.typeInProduct(product.name(), name)));
            }
        }
        for (Run run : book.runs()) {
            if (run instanceof Run.OfBulk bulk
                    && bulk.origin().isKnown()
                    && Names.key(bulk.formula()).equals(key)) {
                notes.add(Finding.note(bulk.origin(), SwapMessages.typeInRun(name)));
            }
        }
        if (notes.isEmpty()) {
            notes.add(Finding.note(original.origin(), SwapMessages.typeAnywhere(name)));
        }
        return notes;
    }

    /** Materials that only price lists beside the workbook offer cannot be costed without these lists. */
    private static List<Finding> pricedElsewhere(Book book, Formula original, Formula applied) {
        String file = original.origin().file();
        Set<String> before = keys(original);
        List<Finding> notes = new ArrayList<>();
        for (Formula.Line line : applied.lines()) {
            Set<String> files = before.contains(Names.key(line.material())) ? Set.of() : files(book, line.material());
            if (!files.isEmpty() && !files.contains(file)) {
                notes.add(Finding.note(
                        Origin.NONE,
                        SwapMessages.pricedElsewhere(line.material(), applied.name(), List.copyOf(files))));
            }
        }
        return notes;
    }

    private static Set<String> keys(Formula formula) {
        return formula.lines().stream().map(line -> Names.key(line.material())).collect(Collectors.toSet());
    }

    private static Set<String> files(Book book, String material) {
        Set<String> files = new LinkedHashSet<>();
        for (Offer offer : book.prices().orderableOn(book.settings().costingDate(), material)) {
            files.add(offer.origin().file());
        }
        return files;
    }
}
