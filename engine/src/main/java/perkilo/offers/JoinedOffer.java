package perkilo.offers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An offer with the rows that make it up.
 *
 * @param offer with the prices of all its rows
 * @param rows at least one, in the order of the file
 * @param conflicts contradictions between them
 * @param <R> the rows
 */
public record JoinedOffer<R extends QuotedRow>(Offer offer, List<R> rows, List<Conflict<R>> conflicts) {

    /**
     * The offers of rows, pack by pack. Rows that quote the same pack on the same day in the same unit are price breaks
     * of one offer.
     *
     * @return in the order in which their packs appear first
     */
    public static <R extends QuotedRow> List<JoinedOffer<R>> of(Collection<R> rows) {
        Map<PackOffered, List<R>> packs = new LinkedHashMap<>();
        for (R row : rows) {
            packs.merge(PackOffered.of(row.offer()), List.of(row), JoinedOffer::joined);
        }
        List<JoinedOffer<R>> offers = new ArrayList<>(packs.size());
        for (List<R> pack : packs.values()) {
            for (List<R> quote : byDay(pack)) {
                offers.add(new Joining<>(quote).joined());
            }
        }
        return offers;
    }

    /** The first row. */
    public R first() {
        return rows.get(0);
    }

    /** Most packs of a long list have one row; a list that cannot grow is enough for it. */
    private static <R> List<R> joined(List<R> before, List<R> more) {
        List<R> all = before.size() == 1 ? new ArrayList<>(before) : before;
        all.addAll(more);
        return all;
    }

    private static <R extends QuotedRow> Collection<List<R>> byDay(List<R> pack) {
        if (pack.size() == 1) {
            return List.of(pack);
        }
        Map<List<Object>, List<R>> quotes = new LinkedHashMap<>();
        for (R row : pack) {
            Offer offer = row.offer();
            List<Object> quote =
                    List.of(offer.validity().day(), offer.packSize().value().stripTrailingZeros(), offer.packUnit());
            quotes.computeIfAbsent(quote, any -> new ArrayList<>()).add(row);
        }
        return quotes.values();
    }
}
