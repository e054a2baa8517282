package perkilo.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Settings;
import perkilo.offers.JoinedOffer;
import perkilo.offers.Offer;
import perkilo.offers.OfferHistory;
import perkilo.offers.QuoteLife;
import perkilo.offers.Unpriced;
import perkilo.reading.table.Findings;

/**
 * Makes the offers of a book: those that count on the costing date, the newest ones that have expired, and those that
 * count later. Quotes that newer ones replace for good are reported and left out.
 */
final class OfferBook {

    private final Settings settings;
    private final Collection<Unpriced> unpriced;
    private final Findings findings;
    private List<Offer> quotes = List.of();

    /**
     * Ready to make offers.
     *
     * @param unpriced packs that lists name without a price
     */
    OfferBook(Settings settings, Collection<Unpriced> unpriced, Findings findings) {
        this.settings = settings;
        this.unpriced = unpriced;
        this.findings = findings;
    }

    /** The offers, in the order of their packs' first rows. */
    List<Offer> offers(List<OfferRow> rows) {
        List<JoinedOffer<OfferRow>> joined = JoinedOffer.of(rows);
        quotes = joined.stream().map(JoinedOffer::offer).toList();
        OfferHistory history = new OfferHistory(quotes, unpriced, settings.costingDate(), settings.priceAgeLimit());
        OfferLives lives = new OfferLives(settings, findings);
        List<Offer> offers = new ArrayList<>();
        for (JoinedOffer<OfferRow> quote : joined) {
            QuoteLife life = history.lifeOf(quote.offer());
            if (!(life instanceof QuoteLife.Withdrawn)) {
                OfferConflicts.report(quote, findings);
            }
            lives.report(quote, life);
            if (isKept(life)) {
                offers.add(ended(quote.offer(), history.endedBy(quote.offer())));
            }
        }
        lives.done();
        return offers;
    }

    /** All quotes that were made into offers, also those that newer ones replace for good. */
    List<Offer> quotes() {
        return quotes;
    }

    private static boolean isKept(QuoteLife life) {
        return !(life instanceof QuoteLife.Withdrawn)
                && !(life instanceof QuoteLife.Superseded superseded
                        && superseded.days().isEmpty());
    }

    /** An offer that ends before the next list that names its pack without a price. */
    private static Offer ended(Offer offer, @Nullable Unpriced list) {
        return list == null ? offer : offer.until(list.quotedOn().minusDays(1));
    }
}
