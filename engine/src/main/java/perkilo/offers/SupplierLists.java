package perkilo.offers;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The lists of one supplier: a list is their quotes in one file, and its day is that of its newest quote. */
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
        private final Set<String> items = new HashSet<>();

        OneList(String file) {
            this.file = file;
        }

        void quoted(LocalDate quoted) {
            day = quoted.isAfter(day) ? quoted : day;
        }

        long countOf(Set<String> others) {
            return items.stream().filter(others::contains).count();
        }
    }

    /**
     * A list's name and day.
     *
     * @param file its name
     * @param day of its newest quote
     */
    public record Named(String file, LocalDate day) {}

    /** Adds a quote of one of the lists. */
    public void add(PackOffered pack, String file, LocalDate quoted) {
        OneList list = byFile.computeIfAbsent(file, OneList::new);
        list.quoted(quoted);
        list.packs.add(pack);
        list.items.add(pack.item());
    }

    /** Adds an item of one of the lists, whose packs nobody asks for. */
    public void add(Listed listed) {
        OneList list = byFile.computeIfAbsent(listed.file(), OneList::new);
        list.quoted(listed.quotedOn());
        list.items.add(listed.item());
    }

    /** The supplier. */
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

    /** Whether a pack was on the second newest list and is missing from the newest. */
    public boolean isGone(PackOffered pack) {
        return count() > 1 && !isInNewest(pack) && newestFirst().get(1).packs.contains(pack);
    }

    /**
     * The newest list that replaces an older one: it has at least half of the items of the older one. A list with fewer
     * items is another list, or a part, such as from a supplier who quotes item by item; an item missing from it means
     * nothing.
     *
     * @param file the older list
     */
    public Optional<Named> successorOf(String file) {
        OneList older = byFile.get(file);
        if (older == null) {
            return Optional.empty();
        }
        Set<String> items = older.items;
        return newerThan(older)
                .filter(newer -> 2 * newer.countOf(items) >= items.size())
                .findFirst()
                .map(newer -> new Named(newer.file, newer.day));
    }

    /** Whether a pack is on a list newer than that of a file. */
    public boolean isInNewerThan(String file, PackOffered pack) {
        OneList older = byFile.get(file);
        return older != null && newerThan(older).anyMatch(newer -> newer.packs.contains(pack));
    }

    /** Lists of a later day, the newest first; lists of one day are parts of one. */
    private Stream<OneList> newerThan(OneList older) {
        return newestFirst().stream().filter(list -> list.day.isAfter(older.day));
    }

    private List<OneList> newestFirst() {
        return byFile.values().stream()
                .sorted(Comparator.<OneList, LocalDate>comparing(list -> list.day)
                        .reversed())
                .toList();
    }
}
