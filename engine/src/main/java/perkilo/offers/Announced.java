package perkilo.offers;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Prices that are announced for later than the costing date.
 *
 * <p>Of one supplier's quotes for one item in one pack the newest holds: an announced price holds for orders placed
 * from its day on, and the one before it until the day before. Where that one ends earlier still, nothing holds in
 * between. An announced price that ends before it begins holds for nobody. The last of them has no end here: what
 * becomes of a price after its {@code Valid until} nobody has said.
 */
public final class Announced {

    private final Map<PackOffered, NavigableSet<LocalDate>> days = new HashMap<>();

    /** Those among offers. */
    public Announced(Collection<Offer> offers, LocalDate costingDate) {
        for (Offer offer : offers) {
            LocalDate quoted = offer.quotedOn();
            if (quoted != null && offer.isAnnouncedOn(costingDate) && !offer.isExpiredOn(quoted)) {
                days.computeIfAbsent(PackOffered.of(offer), pack -> new TreeSet<>())
                        .add(quoted);
            }
        }
    }

    /** The day that another price of the same pack takes over from an offer's; empty where none does. */
    public Optional<LocalDate> nextDay(Offer offer) {
        NavigableSet<LocalDate> ofPack = days.isEmpty() ? null : days.get(PackOffered.of(offer));
        LocalDate quoted = offer.quotedOn();
        return ofPack == null
                ? Optional.empty()
                : Optional.ofNullable(quoted == null ? ofPack.first() : ofPack.higher(quoted));
    }

    /** The last day to place an order at an offer's price; empty where no other price takes over. */
    public Optional<LocalDate> lastOrderDay(Offer offer) {
        LocalDate until = offer.validUntil();
        return nextDay(offer)
                .map(next -> next.minusDays(1))
                .map(last -> until != null && until.isBefore(last) ? until : last);
    }
}
