package perkilo.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.model.Book;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.offers.PackOffered;
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

    /** By {@link Names#key} of the supplier. */
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
                files.computeIfAbsent(row.pack().supplier(), key -> new HashSet<>())
                        .add(row.origin().file());
            }
        }
        for (OfferRow row : rows) {
            LocalDate quoted = row.quotedOn();
            PackOffered pack = row.pack();
            if (quoted != null
                    && isOfList(row, costingDate)
                    && files.getOrDefault(pack.supplier(), Set.of()).size() > 1) {
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

    /** Warns of those that are used and could be bought; in one warning where a newer list lacks many. */
    void report(Book book, BookChecks.Items items, Findings findings) {
        LocalDate costingDate = book.settings().costingDate();
        Map<List<String>, List<Offer>> byList = new LinkedHashMap<>();
        for (Offer offer : lists.isEmpty() ? List.<Offer>of() : book.offers()) {
            String supplier = Names.key(offer.supplier());
            if (lists.containsKey(supplier) && offer.isValidOn(costingDate) && items.isUsed(offer)) {
                byList.computeIfAbsent(List.of(supplier, offer.origin().file()), list -> new ArrayList<>())
                        .add(offer);
            }
        }
        byList.values().forEach(offers -> report(offers, findings));
    }

    /** The offers of one list, of which newer ones may lack some. */
    private void report(List<Offer> offers, Findings findings) {
        Offer first = offers.get(0);
        String file = first.origin().file();
        SupplierLists ofSupplier = Objects.requireNonNull(lists.get(Names.key(first.supplier())));
        SupplierLists.Named newest = ofSupplier.successorOf(file).orElse(null);
        if (newest == null) {
            return;
        }
        List<Offer> gone = offers.stream()
                .filter(offer -> !ofSupplier.isInNewerThan(file, PackOffered.of(offer)))
                .toList();
        if (gone.size() > ONE_BY_ONE) {
            findings.warning(gone.get(0).origin(), text(gone, newest));
        } else {
            gone.forEach(offer -> findings.warning(offer.origin(), text(offer, newest)));
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
