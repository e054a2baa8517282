package perkilo.workbook.read;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Names;
import perkilo.model.Offer;
import perkilo.model.PackOffered;
import perkilo.model.SupplierLists;
import perkilo.workbook.read.table.Findings;

/**
 * Packs that a supplier's newest list no longer has, although an older one of his had them.
 *
 * <p>They may still be bought: a list may be a part of what he sells, and nothing newer supersedes their prices. But
 * that is not known, so each is named where it could be bought.
 */
final class WithdrawnPacks {

    private final Map<String, SupplierLists> lists = new HashMap<>();

    /**
     * The lists of all suppliers who sent more than one.
     *
     * @param rows of all lists and of the workbook, which is no list
     */
    WithdrawnPacks(List<OfferRow> rows, LocalDate costingDate) {
        Map<String, Set<String>> files = new HashMap<>();
        for (OfferRow row : rows) {
            if (isOfList(row, costingDate)) {
                files.computeIfAbsent(row.supplier(), name -> new HashSet<>())
                        .add(row.origin().file());
            }
        }
        for (OfferRow row : rows) {
            LocalDate quoted = row.quotedOn();
            if (quoted != null
                    && isOfList(row, costingDate)
                    && files.getOrDefault(row.supplier(), Set.of()).size() > 1) {
                PackOffered pack = row.pack();
                lists.computeIfAbsent(pack.supplier(), key -> new SupplierLists(row.supplier()))
                        .add(pack, row.origin().file(), quoted);
            }
        }
    }

    private static boolean isOfList(OfferRow row, LocalDate costingDate) {
        LocalDate quoted = row.quotedOn();
        return quoted != null
                && !quoted.isAfter(costingDate)
                && !row.row().table().grid().ofBook();
    }

    /** Warns of each that is used and could be bought. */
    void report(Book book, BookChecks.Items items, Findings findings) {
        LocalDate costingDate = book.settings().costingDate();
        for (Offer offer : lists.isEmpty() ? List.<Offer>of() : book.offers()) {
            SupplierLists ofSupplier = lists.get(Names.key(offer.supplier()));
            if (ofSupplier != null && offer.isValidOn(costingDate) && items.isUsed(offer)) {
                ofSupplier
                        .newestWithout(PackOffered.of(offer), offer.origin().file())
                        .ifPresent(newest -> findings.warning(offer.origin(), text(offer, newest)));
            }
        }
    }

    private static String text(Offer offer, SupplierLists.Named newest) {
        return "\"%s\" in packs of %s is not on %s's newest list, %s of %s; this price of %s may still be bought at, as a list may be a part of what he sells: ask him"
                .formatted(offer.item(), offer.pack(), offer.supplier(), newest.file(), newest.day(), offer.quotedOn());
    }
}
