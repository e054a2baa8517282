package perkilo.swaps;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.swaps.blend.Blend;

/**
 * A new formula made from a swap or a blend; the original stays unchanged.
 *
 * @param formula with the change applied, produced like the original, with a name that no other formula has
 * @param notes where to type its name to cost it, and which price lists that needs
 */
public record AppliedSwap(Formula formula, List<Finding> notes) {

    public AppliedSwap {
        notes = List.copyOf(notes);
    }

    /**
     * Applies a swap.
     *
     * @param book that it was found in
     * @param number of the swap in its list, from one
     * @return the formula is named {@code <formula> swap <number>}
     */
    public static AppliedSwap of(Book book, Swap swap, int number) {
        return of(book, swap.formula(), swap.trial().after().formula(), "swap " + number);
    }

    /**
     * Applies a blend.
     *
     * @param book that it was found in
     * @param number of the blend in its list, from one
     * @return the formula is named {@code <formula> blend <number>}
     */
    public static AppliedSwap of(Book book, Blend blend, int number) {
        return of(book, blend.formula(), blend.after().formula(), "blend " + number);
    }

    private static AppliedSwap of(Book book, Formula original, Formula changed, String what) {
        String name = free(book, original.name() + " " + what);
        Formula applied = new Formula(name, changed.lines(), original.batching(), Origin.NONE);
        List<Finding> notes = new ArrayList<>(placesToType(book, original, name));
        notes.addAll(pricedElsewhere(book, original, applied));
        return new AppliedSwap(applied, notes);
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
