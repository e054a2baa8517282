package perkilo.costing;

import java.time.LocalDate;
import java.util.List;
import perkilo.model.Book;
import perkilo.offers.Offer;

/** Why an item cannot be bought on the costing date, in a person's words. */
public final class Unsold {

    private Unsold() {}

    /** Why nobody sells an item: nobody offers it, or no offer holds on the costing date; and what to do. */
    public static String why(Book book, Item item) {
        List<Offer> offers = book.offersFor(item.name());
        if (offers.isEmpty()) {
            return "nobody offers \"%s\". Add an offer for it%s."
                    .formatted(
                            item.name(), item.isMaterial() ? ", or give it a house price on the Materials sheet" : "");
        }
        Offer last = offers.get(offers.size() - 1);
        LocalDate today = book.settings().costingDate();
        return "no offer for \"%s\" holds on %s: the one of %s (%s) %s. Ask for a new quote."
                .formatted(item.name(), today, last.supplier(), last.origin().where(), whyNot(last, today));
    }

    private static String whyNot(Offer offer, LocalDate today) {
        if (offer.validUntil() != null && offer.validUntil().isBefore(today)) {
            return "expired on " + offer.validUntil();
        }
        if (offer.quotedOn() != null && offer.quotedOn().isAfter(today)) {
            return "is only quoted on " + offer.quotedOn();
        }
        return "cannot be used";
    }
}
