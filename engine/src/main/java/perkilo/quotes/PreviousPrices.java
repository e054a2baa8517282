package perkilo.quotes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.model.Book;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.offers.PackOffered;

/**
 * A book as if the newest lists had not come: each pack at its previous prices.
 *
 * <p>Validity and day stay those of the present quote, so that nothing but prices and their breaks differs. A pack that
 * is new stays out, unless nobody offered its item before.
 */
final class PreviousPrices {

    private PreviousPrices() {}

    static Book in(Book book, PriceChanges changes) {
        Map<PackOffered, Offer> before = new HashMap<>();
        Set<PackOffered> fresh = new HashSet<>();
        for (PriceChange change : changes.all()) {
            QuotedPrice previous = change.before();
            PackOffered pack = PackOffered.of(change.offer());
            if (previous == null) {
                fresh.add(pack);
            } else if (change.now() != null) {
                before.put(pack, previous.offer());
            }
        }
        Set<String> offeredBefore = new HashSet<>();
        book.offers().stream()
                .filter(offer -> offer.isValidOn(changes.on()) && !fresh.contains(PackOffered.of(offer)))
                .forEach(offer -> offeredBefore.add(Names.key(offer.item())));
        List<Offer> offers = new ArrayList<>();
        for (Offer offer : book.offers()) {
            PackOffered pack = PackOffered.of(offer);
            if (!fresh.contains(pack) || !offeredBefore.contains(Names.key(offer.item()))) {
                Offer previous = before.get(pack);
                offers.add(previous == null ? offer : at(offer, previous));
            }
        }
        return book.withOffers(offers);
    }

    private static Offer at(Offer now, Offer before) {
        return new Offer(
                now.supplier(),
                now.item(),
                before.packSize(),
                before.packUnit(),
                before.breaks(),
                before.currency(),
                before.minimumOrder(),
                before.orderMultiple(),
                before.duty(),
                now.quotedOn(),
                now.validUntil(),
                now.origin());
    }
}
