package perkilo.costing;

import java.time.LocalDate;
import java.util.List;
import perkilo.model.Book;
import perkilo.offers.Offer;

/** Why an item cannot be bought on the costing date. */
public final class Unsold {

    private Unsold() {}

    /** The message for an item: it has no offer, or none that is valid on the costing date; and what to do. */
    public static String why(Book book, Item item) {
        List<Offer> offers = book.offersFor(item.name());
        if (offers.isEmpty()) {
            return item.isMaterial()
                    ? CostMessages.materialWithoutOffer(item.name())
                    : CostMessages.componentWithoutOffer(item.name());
        }
        return notToday(
                item.name(), offers.get(offers.size() - 1), book.settings().costingDate());
    }

    private static String notToday(String item, Offer last, LocalDate today) {
        String cell = last.origin().where();
        LocalDate end = last.validUntil();
        if (end != null && end.isBefore(today)) {
            return CostMessages.offerExpired(item, today, last.supplier(), cell, end);
        }
        LocalDate start = last.quotedOn();
        if (start != null && start.isAfter(today)) {
            return CostMessages.offerStartsLater(item, today, last.supplier(), cell, start);
        }
        return CostMessages.offerNotUsable(item, today, last.supplier(), cell);
    }
}
