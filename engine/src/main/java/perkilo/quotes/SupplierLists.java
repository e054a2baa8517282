package perkilo.quotes;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.model.Offer;
import perkilo.model.PackOffered;

/** The lists of one supplier: a list is what one file holds of his quotes, and its day is that of its newest quote. */
final class SupplierLists {

    private final String supplier;
    private final Map<String, OneList> byFile = new LinkedHashMap<>();

    SupplierLists(String supplier) {
        this.supplier = supplier;
    }

    /** One list: its day, and the packs in it. */
    private static final class OneList {

        private LocalDate day = LocalDate.MIN;
        private final Set<PackOffered> packs = new HashSet<>();
    }

    void add(Offer quote, LocalDate quoted) {
        OneList list = byFile.computeIfAbsent(quote.origin().file(), file -> new OneList());
        list.day = quoted.isAfter(list.day) ? quoted : list.day;
        list.packs.add(PackOffered.of(quote));
    }

    String supplier() {
        return supplier;
    }

    /** Whether there is no list at all, only quotes in a workbook. */
    boolean isEmpty() {
        return byFile.isEmpty();
    }

    /** Whether there is one list, so that nothing can be missing from it or new in it. */
    boolean isAlone() {
        return byFile.size() == 1;
    }

    /** Whether a pack is on the newest list. */
    boolean isInNewest(PackOffered pack) {
        return !isEmpty() && newestFirst().get(0).packs.contains(pack);
    }

    /** Whether a pack is on the newest list, of several. */
    boolean isNew(PackOffered pack) {
        return byFile.size() > 1 && isInNewest(pack);
    }

    /** Whether a pack was on the last list but one, and is not on the newest. */
    boolean isGone(PackOffered pack) {
        return byFile.size() > 1
                && !isInNewest(pack)
                && newestFirst().get(1).packs.contains(pack);
    }

    private List<OneList> newestFirst() {
        return byFile.values().stream()
                .sorted(Comparator.<OneList, LocalDate>comparing(list -> list.day)
                        .reversed())
                .toList();
    }
}
