package perkilo.model;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The lists of one supplier: a list is what one file holds of his quotes, and its day is that of its newest quote. */
public final class SupplierLists {

    private final String supplier;
    private final Map<String, OneList> byFile = new LinkedHashMap<>();

    /** No lists yet. */
    public SupplierLists(String supplier) {
        this.supplier = supplier;
    }

    /** One list: its file, its day, and the packs in it. */
    private static final class OneList {

        private final String file;
        private LocalDate day = LocalDate.MIN;
        private final Set<PackOffered> packs = new HashSet<>();

        OneList(String file) {
            this.file = file;
        }
    }

    /**
     * A list as it is named to a person.
     *
     * @param file its name
     * @param day of its newest quote
     */
    public record Named(String file, LocalDate day) {}

    /** Adds a quote of one of the lists. */
    public void add(PackOffered pack, String file, LocalDate quoted) {
        OneList list = byFile.computeIfAbsent(file, OneList::new);
        list.day = quoted.isAfter(list.day) ? quoted : list.day;
        list.packs.add(pack);
    }

    /** Whose lists they are. */
    public String supplier() {
        return supplier;
    }

    /** How many lists there are. */
    public int count() {
        return byFile.size();
    }

    /** Whether a pack is on the newest list. */
    public boolean isInNewest(PackOffered pack) {
        return count() > 0 && newestFirst().get(0).packs.contains(pack);
    }

    /** Whether a pack was on the last list but one, and is not on the newest. */
    public boolean isGone(PackOffered pack) {
        return count() > 1 && !isInNewest(pack) && newestFirst().get(1).packs.contains(pack);
    }

    /** The newest list, if a pack is not on it, but on an older one: that of a file; empty elsewhere. */
    public Optional<Named> newestWithout(PackOffered pack, String file) {
        if (count() < 2 || !byFile.containsKey(file) || isInNewest(pack)) {
            return Optional.empty();
        }
        OneList newest = newestFirst().get(0);
        return Optional.of(new Named(newest.file, newest.day));
    }

    private List<OneList> newestFirst() {
        return byFile.values().stream()
                .sorted(Comparator.<OneList, LocalDate>comparing(list -> list.day)
                        .reversed())
                .toList();
    }
}
