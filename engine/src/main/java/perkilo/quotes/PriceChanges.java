package perkilo.quotes;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.model.Names;
import perkilo.model.Offer;
import perkilo.model.PackOffered;

/**
 * What rose or fell since each supplier's last list.
 *
 * @param on the day that it is looked at
 * @param all what became of every price of the newest lists; those that changed most come first
 * @param alone suppliers of whom there is only one list, so that nothing can be compared
 */
public record PriceChanges(LocalDate on, List<PriceChange> all, List<String> alone) {

    public PriceChanges {
        all = List.copyOf(all);
        alone = List.copyOf(alone);
    }

    /**
     * The changes on a day.
     *
     * @param quotes the history; quotes without a day are left out
     * @param book the file whose quotes are no list of a supplier's: they are compared with, but nothing is missing
     *     from a list because it stands in a workbook; empty for none
     */
    public static PriceChanges on(LocalDate day, List<Offer> quotes, String book) {
        Map<String, SupplierLists> lists = new LinkedHashMap<>();
        Map<PackOffered, NavigableMap<LocalDate, Offer>> history = new LinkedHashMap<>();
        for (Offer quote : quotes) {
            LocalDate quoted = quote.quotedOn();
            if (quoted != null && !quoted.isAfter(day)) {
                SupplierLists ofSupplier =
                        lists.computeIfAbsent(Names.key(quote.supplier()), key -> new SupplierLists(quote.supplier()));
                if (!quote.origin().file().equals(book)) {
                    ofSupplier.add(quote, quoted);
                }
                history.computeIfAbsent(PackOffered.of(quote), any -> new TreeMap<>())
                        .put(quoted, quote);
            }
        }
        List<PriceChange> changes = new ArrayList<>();
        history.forEach((pack, byDay) -> {
            SupplierLists ofSupplier = lists.get(pack.supplier());
            if (ofSupplier != null) {
                changes.addAll(of(pack, byDay, ofSupplier));
            }
        });
        List<String> alone = lists.values().stream()
                .filter(SupplierLists::isAlone)
                .map(SupplierLists::supplier)
                .toList();
        changes.sort(mostFirst());
        return new PriceChanges(day, changes, alone);
    }

    private static List<PriceChange> of(PackOffered pack, NavigableMap<LocalDate, Offer> byDay, SupplierLists lists) {
        Offer last = byDay.lastEntry().getValue();
        if (lists.isGone(pack)) {
            return of(last, null);
        }
        Map.Entry<LocalDate, Offer> earlier = byDay.lowerEntry(byDay.lastKey());
        if (earlier != null) {
            return lists.isInNewest(pack) || lists.isEmpty() ? of(earlier.getValue(), last) : List.of();
        }
        return lists.isNew(pack) ? of(null, last) : List.of();
    }

    /** What became of each price of a pack, at every quantity at which either list begins a new price. */
    private static List<PriceChange> of(@Nullable Offer before, @Nullable Offer now) {
        NavigableSet<BigDecimal> quantities = new TreeSet<>();
        for (Offer one : new @Nullable Offer[] {before, now}) {
            if (one != null) {
                one.breaks().forEach(each -> quantities.add(each.fromQuantity()));
            }
        }
        List<PriceChange> changes = new ArrayList<>();
        for (BigDecimal from : quantities) {
            changes.add(new PriceChange(
                    from,
                    before == null ? null : QuotedPrice.of(before, from),
                    now == null ? null : QuotedPrice.of(now, from)));
        }
        return changes;
    }

    private static Comparator<PriceChange> mostFirst() {
        return Comparator.<PriceChange, BigDecimal>comparing(
                        change -> change.fraction().map(BigDecimal::abs).orElse(BigDecimal.ZERO),
                        Comparator.reverseOrder())
                .thenComparing(PriceChange::kind)
                .thenComparing(change -> change.offer().supplier())
                .thenComparing(change -> change.offer().item())
                .thenComparing(change -> change.offer().packSize().value())
                .thenComparing(PriceChange::from);
    }

    /** The changes of a kind, in their order. */
    public List<PriceChange> of(PriceChange.Kind kind) {
        return all.stream().filter(change -> change.kind() == kind).toList();
    }

    /** Everything but the prices that stayed the same. */
    public List<PriceChange> changed() {
        return all.stream()
                .filter(change -> change.kind() != PriceChange.Kind.SAME)
                .toList();
    }

    /** The answer in a sentence. */
    public String answer() {
        return "%s rose, %d fell, %d stayed the same; new: %d; no longer on the newest list: %d."
                .formatted(
                        prices(of(PriceChange.Kind.ROSE).size()),
                        of(PriceChange.Kind.FELL).size(),
                        of(PriceChange.Kind.SAME).size(),
                        of(PriceChange.Kind.NEW).size(),
                        of(PriceChange.Kind.GONE).size());
    }

    private static String prices(int count) {
        return count == 1 ? "1 price" : count + " prices";
    }
}
