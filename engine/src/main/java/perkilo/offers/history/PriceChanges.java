package perkilo.offers.history;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.offers.AgeLimit;
import perkilo.offers.KnownLists;
import perkilo.offers.Offer;
import perkilo.offers.PackHistory;
import perkilo.offers.PackOffered;
import perkilo.offers.SupplierLists;
import perkilo.origin.Counted;

/**
 * The price changes since each supplier's last list.
 *
 * @param on the day as seen from
 * @param all every price of the newest lists with its change; the largest changes come first
 * @param alone suppliers with one list and nothing earlier to compare it with
 */
public record PriceChanges(LocalDate on, List<PriceChange> all, List<String> alone) {

    public PriceChanges {
        all = List.copyOf(all);
        alone = List.copyOf(alone);
    }

    /**
     * The changes on a day.
     *
     * @param quotes the history; quotes without a day are the oldest if they are from the workbook, and else left out
     * @param book the workbook's file: its quotes are compared with, but they are no supplier's list, so nothing is
     *     missing from a list because the workbook has it; empty for none
     * @param ageLimit see {@link PackHistory}
     */
    public static PriceChanges on(LocalDate day, List<Offer> quotes, String book, AgeLimit ageLimit) {
        KnownLists lists = new KnownLists();
        List<Offer> known = new ArrayList<>();
        Set<String> inBook = new HashSet<>();
        for (Offer quote : quotes) {
            boolean ofBook = quote.origin().file().equals(book);
            LocalDate quoted = quote.quotedOn();
            if (quote.isAnnouncedOn(day) || (quoted == null && !ofBook)) {
                continue;
            }
            known.add(quote);
            PackOffered pack = PackOffered.of(quote);
            if (ofBook) {
                inBook.add(pack.supplier());
            } else if (quoted != null) {
                lists.add(pack, quote, quoted);
            }
        }
        List<PriceChange> changes = new ArrayList<>();
        PackHistory.byPack(known, day, ageLimit).forEach((pack, history) -> {
            SupplierLists ofSupplier = lists.of(pack.supplier());
            Offer now = last(history.now());
            Offer before = last(history.before());
            if (now != null) {
                changes.addAll(
                        ofSupplier == null
                                ? ofBookAlone(before, now)
                                : of(pack, before, now, ofSupplier, inBook.contains(pack.supplier())));
            }
        });
        List<String> alone = lists.bySupplier().entrySet().stream()
                .filter(one -> one.getValue().count() == 1 && !inBook.contains(one.getKey()))
                .map(one -> one.getValue().supplier())
                .toList();
        changes.sort(mostFirst());
        return new PriceChanges(day, changes, alone);
    }

    private static @Nullable Offer last(List<Offer> quotes) {
        return quotes.isEmpty() ? null : quotes.get(quotes.size() - 1);
    }

    /**
     * The changes of a pack's prices.
     *
     * @param before the quote that counted before; null if there is none
     * @param now the quote that counts
     * @param inBook whether the workbook has quotes of the supplier, so that even their first list has something
     *     earlier
     */
    private static List<PriceChange> of(
            PackOffered pack, @Nullable Offer before, Offer now, SupplierLists lists, boolean inBook) {
        if (lists.isGone(pack)) {
            return of(now, null);
        }
        boolean somethingEarlier = before != null || inBook || lists.count() > 1;
        return lists.isInNewest(pack) && somethingEarlier ? of(before, now) : List.of();
    }

    /** Changes for a supplier without a list: only quotes that are in the workbook twice can be compared. */
    private static List<PriceChange> ofBookAlone(@Nullable Offer before, Offer now) {
        return before == null ? List.of() : of(before, now);
    }

    /** The changes of a pack's prices, at every quantity at which either quote has a price break. */
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

    /** All changes but the prices that stayed the same. */
    public List<PriceChange> changed() {
        return all.stream()
                .filter(change -> change.kind() != PriceChange.Kind.SAME)
                .toList();
    }

    /** The answer in a sentence. */
    public String answer() {
        return "%s rose, %d fell, %d stayed the same; new: %d; no longer on the newest list: %d."
                .formatted(
                        Counted.of(of(PriceChange.Kind.ROSE).size(), "price"),
                        of(PriceChange.Kind.FELL).size(),
                        of(PriceChange.Kind.SAME).size(),
                        of(PriceChange.Kind.NEW).size(),
                        of(PriceChange.Kind.GONE).size());
    }
}
