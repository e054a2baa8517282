package perkilo.offers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;

/** The lists of all suppliers. */
public final class KnownLists {

    /** By {@link Names#key} of the supplier. */
    private final Map<String, SupplierLists> lists = new LinkedHashMap<>();

    /** No lists yet. */
    public KnownLists() {}

    /**
     * The lists of the suppliers who sent more than one.
     *
     * @param quotes of lists, each with its day
     * @param others what the lists hold besides; it counts only for suppliers with a quote
     */
    public static KnownLists ofSeveral(Collection<Offer> quotes, Collection<Listed> others) {
        Map<String, Set<String>> files = new HashMap<>();
        for (Offer quote : quotes) {
            files.computeIfAbsent(Names.key(quote.supplier()), key -> new HashSet<>())
                    .add(quote.origin().file());
        }
        for (Listed other : others) {
            Set<String> known = files.get(other.supplier());
            if (known != null) {
                known.add(other.file());
            }
        }
        KnownLists lists = new KnownLists();
        for (Offer quote : quotes) {
            LocalDate quoted = quote.quotedOn();
            if (quoted != null
                    && files.getOrDefault(Names.key(quote.supplier()), Set.of()).size() > 1) {
                lists.add(PackOffered.of(quote), quote, quoted);
            }
        }
        for (Listed other : others) {
            SupplierLists known = lists.of(other.supplier());
            if (known != null) {
                known.add(other);
            }
        }
        return lists;
    }

    /** Adds a quote of one of the lists. */
    public void add(PackOffered pack, Offer quote, LocalDate quoted) {
        lists.computeIfAbsent(pack.supplier(), key -> new SupplierLists(quote.supplier()))
                .add(pack, quote.origin().file(), quoted);
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return lists.isEmpty();
    }

    /**
     * The lists of a supplier; null if they sent none.
     *
     * @param supplier by {@link Names#key}
     */
    public @Nullable SupplierLists of(String supplier) {
        return lists.get(supplier);
    }

    /** The lists of each supplier, by {@link Names#key} of the supplier. */
    public Map<String, SupplierLists> bySupplier() {
        return lists;
    }

    /**
     * Offers of one list that are missing from a newer list of the same supplier.
     *
     * @param offers of one list, at least one
     * @param newest the newer list
     */
    public record Lacking(List<Offer> offers, SupplierLists.Named newest) {}

    /**
     * Those of some offers that newer lists lack, list by list.
     *
     * @param offers that could be bought
     */
    public List<Lacking> lacking(Collection<Offer> offers) {
        Map<List<String>, List<Offer>> byList = new LinkedHashMap<>();
        for (Offer offer : offers) {
            String supplier = Names.key(offer.supplier());
            if (lists.containsKey(supplier)) {
                byList.computeIfAbsent(List.of(supplier, offer.origin().file()), list -> new ArrayList<>())
                        .add(offer);
            }
        }
        List<Lacking> lacking = new ArrayList<>();
        byList.forEach((list, ofList) -> {
            SupplierLists ofSupplier = lists.get(list.get(0));
            if (ofSupplier != null) {
                ofSupplier.successorOf(list.get(1)).ifPresent(newest -> {
                    List<Offer> gone = ofList.stream()
                            .filter(offer -> !ofSupplier.isInNewerThan(list.get(1), PackOffered.of(offer)))
                            .toList();
                    if (!gone.isEmpty()) {
                        lacking.add(new Lacking(gone, newest));
                    }
                });
            }
        });
        return lacking;
    }
}
