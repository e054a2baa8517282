package perkilo.reading;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import perkilo.model.Book;
import perkilo.offers.KnownLists;
import perkilo.offers.Offer;
import perkilo.offers.SupplierLists;
import perkilo.reading.table.Findings;

/**
 * Packs that a supplier's newest list no longer has, although an older one of his had them.
 *
 * <p>They may still be bought: a list may be a part of what he sells, and nothing newer supersedes their prices. But
 * that is not known, so each is named where it could be bought. A newer list that has less than half of an older one's
 * items is not its successor, and lacks nothing: see {@link SupplierLists#successorOf}.
 */
final class WithdrawnPacks {

    private static final int ONE_BY_ONE = 3;
    private static final int NAMED = 12;

    private final KnownLists lists;

    /**
     * The lists of all suppliers who sent more than one.
     *
     * @param rows of all lists and of the workbook, which is no list
     */
    WithdrawnPacks(List<OfferRow> rows, LocalDate costingDate) {
        lists = KnownLists.ofSeveral(rows.stream()
                .filter(row -> isOfList(row, costingDate))
                .map(OfferRow::offer)
                .toList());
    }

    private static boolean isOfList(OfferRow row, LocalDate costingDate) {
        LocalDate quoted = row.offer().quotedOn();
        return quoted != null
                && !quoted.isAfter(costingDate)
                && !row.row().table().grid().ofBook();
    }

    /** Warns of those that are used and could be bought; in one warning where a newer list lacks many. */
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
        return "\"%s\" in packs of %s is not on %s's newest list, %s of %s; this price of %s may still be bought at, as a list may be a part of what he sells: ask him"
                .formatted(offer.item(), offer.pack(), offer.supplier(), newest.file(), newest.day(), offer.quotedOn());
    }

    private static String text(List<Offer> gone, SupplierLists.Named newest) {
        String packs = gone.stream()
                .limit(NAMED)
                .map(offer -> "\"%s\" in packs of %s".formatted(offer.item(), offer.pack()))
                .collect(Collectors.joining(", "));
        int more = gone.size() - NAMED;
        return "%d packs of this list are not on %s's newest list, %s of %s: %s%s; they may still be bought at their older prices, as a list may be a part of what he sells: ask him"
                .formatted(
                        gone.size(),
                        gone.get(0).supplier(),
                        newest.file(),
                        newest.day(),
                        packs,
                        more > 0 ? " and %d more".formatted(more) : "");
    }
}
