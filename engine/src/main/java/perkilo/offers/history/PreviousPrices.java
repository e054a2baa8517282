package perkilo.offers.history;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.offers.OfferHistory;
import perkilo.offers.PackOffered;

/**
 * Offers at their previous prices, as if the newest lists did not exist.
 *
 * <p>Validity and day are those of the present quote, so that only prices and price breaks differ. A new pack is left
 * out, unless its item had no offer before.
 */
public final class PreviousPrices {

    private PreviousPrices() {}

    /**
     * The offers at their previous prices.
     *
     * @param history of the offers
     */
    public static List<Offer> in(List<Offer> offers, OfferHistory history, PriceChanges changes) {
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
        history.orderableOn(changes.on()).stream()
                .filter(offer -> !fresh.contains(PackOffered.of(offer)))
                .forEach(offer -> offeredBefore.add(Names.key(offer.item())));
        List<Offer> previous = new ArrayList<>();
        for (Offer offer : offers) {
            PackOffered pack = PackOffered.of(offer);
            if (!fresh.contains(pack) || !offeredBefore.contains(Names.key(offer.item()))) {
                Offer earlier = before.get(pack);
                previous.add(earlier == null ? offer : at(offer, earlier));
            }
        }
        return previous;
    }

    private static Offer at(Offer now, Offer before) {
        return new Offer(
                now.supplier(),
                now.item(),
                before.packSize(),
                before.packUnit(),
                before.breaks(),
                before.currency(),
                before.terms(),
                now.validity(),
                now.origin());
    }
}
