package perkilo.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import perkilo.model.Settings;
import perkilo.offers.JoinedOffer;
import perkilo.offers.Offer;
import perkilo.offers.OfferHistory;
import perkilo.offers.OrderDays;
import perkilo.offers.QuoteLife;
import perkilo.offers.Unpriced;
import perkilo.reading.table.Findings;

/**
 * Makes the offers of a book: those that are valid on the costing date, those that have expired, and those that are
 * announced for later. Quotes that newer ones replace are reported and left out.
 */
final class OfferBook {

    private final Settings settings;
    private final Collection<Unpriced> unpriced;
    private final Findings findings;

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
        List<JoinedOffer<OfferRow>> quotes = JoinedOffer.of(rows);
        OfferHistory history =
                new OfferHistory(quotes.stream().map(JoinedOffer::offer).toList(), unpriced, settings.costingDate());
        OfferLives lives = new OfferLives(settings, findings);
        List<Offer> offers = new ArrayList<>();
        for (JoinedOffer<OfferRow> quote : quotes) {
            QuoteLife life = history.lifeOf(quote.offer());
            if (!(life instanceof QuoteLife.Withdrawn)) {
                OfferConflicts.report(quote, findings);
            }
            lives.report(quote, life);
            if (!(life instanceof QuoteLife.Withdrawn || life instanceof QuoteLife.Superseded)) {
                offers.add(ended(quote.offer(), life));
            }
        }
        lives.done();
        return offers;
    }

    /** An offer that ends before the next list that names its pack without a price, if such a list is announced. */
    private static Offer ended(Offer offer, QuoteLife life) {
        OrderDays days = life instanceof QuoteLife.Holds holds
                ? holds.days()
                : life instanceof QuoteLife.Announced later ? later.days() : null;
        LocalDate last = days == null ? null : days.last();
        return days == null || last == null || days.endedBy() == null ? offer : offer.until(last);
    }
}
