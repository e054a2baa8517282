package perkilo.reading;

import java.time.LocalDate;
import java.util.List;
import perkilo.model.Book;
import perkilo.offers.KnownLists;
import perkilo.offers.Listed;
import perkilo.offers.Offer;
import perkilo.offers.SupplierLists;
import perkilo.reading.table.Findings;

/**
 * Packs that are missing on a supplier's newest list, although an older list of theirs had them.
 *
 * <p>Their prices are still used, because a list may be partial and no newer price replaces them. That is uncertain, so
 * there is a warning for each pack that could be bought. A newer list with less than half of the items of an older one
 * is not its successor, so nothing is missing on it: see {@link SupplierLists#successorOf}.
 */
final class WithdrawnPacks {

    private static final int ONE_BY_ONE = 3;
    private static final int NAMED = 12;

    private final KnownLists lists;

    /**
     * Ready to compare the lists of all suppliers who sent more than one.
     *
     * @param rows the rows of all lists and of the workbook, which is not a list
     * @param others what the lists hold besides
     */
    WithdrawnPacks(List<OfferRow> rows, List<Listed> others, LocalDate costingDate) {
        lists = KnownLists.ofSeveral(
                rows.stream()
                        .filter(row -> isOfList(row, costingDate))
                        .map(OfferRow::offer)
                        .toList(),
                others.stream()
                        .filter(other -> !other.quotedOn().isAfter(costingDate))
                        .toList());
    }

    private static boolean isOfList(OfferRow row, LocalDate costingDate) {
        LocalDate quoted = row.offer().quotedOn();
        return quoted != null
                && !quoted.isAfter(costingDate)
                && !row.row().table().grid().ofBook();
    }

    /** Warns of packs that are used and could be bought; in one warning if many are missing on a list. */
    void report(Book book, BookChecks.Items items, Findings findings) {
        if (lists.isEmpty()) {
            return;
        }
        List<Offer> bought = book.prices().orderableOn(book.settings().costingDate()).stream()
                .filter(items::isUsed)
                .toList();
        for (KnownLists.Lacking lacking : lists.lacking(bought)) {
            List<Offer> gone = lacking.offers();
            if (gone.size() > ONE_BY_ONE) {
                findings.warning(gone.get(0).origin(), text(gone, lacking.newest()));
            } else {
                gone.forEach(offer -> findings.warning(offer.origin(), text(offer, lacking.newest())));
            }
        }
    }

    private static String text(Offer offer, SupplierLists.Named newest) {
        return OfferMessages.notOnNewestList(
                offer.item(), offer.pack(), offer.supplier(), newest.file(), newest.day(), offer.quotedOn());
    }

    private static String text(List<Offer> gone, SupplierLists.Named newest) {
        List<String> packs = gone.stream()
                .limit(NAMED)
                .map(offer -> "\"" + offer.item() + "\" in packs of " + offer.pack())
                .toList();
        return OfferMessages.notOnNewestList(
                packs, gone.size() - packs.size(), gone.get(0).supplier(), newest.file(), newest.day());
    }
}
