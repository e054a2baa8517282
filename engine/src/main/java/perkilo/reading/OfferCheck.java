package perkilo.reading;

import java.util.List;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.offers.OfferHistory;
import perkilo.reading.table.Findings;

/** Checks that packs are in units that fit their items: materials by weight or volume, components in pieces. */
final class OfferCheck {

    private final Book book;
    private final BookChecks.Items items;
    private final OfferHistory prices;
    private final Findings findings;

    OfferCheck(Book book, BookChecks.Items items, Findings findings) {
        this.book = book;
        this.items = items;
        this.prices = book.prices();
        this.findings = findings;
    }

    /** Reports what does not fit; returns the offers that can be measured. */
    List<Offer> kept() {
        return book.offers().stream().filter(this::fits).toList();
    }

    private boolean fits(Offer offer) {
        checkPrices(offer);
        String key = Names.key(offer.item());
        boolean count = offer.packUnit().isCount();
        boolean component = items.components().containsKey(key);
        boolean material = items.materials().containsKey(key)
                || (!component && book.materials().containsKey(key));
        if (material && count) {
            findings.error(offer.packSize().origin(), OfferMessages.materialInPieces(offer.item()));
        } else if (component && !count) {
            findings.error(
                    offer.packSize().origin(),
                    OfferMessages.componentNotInPieces(
                            offer.item(), offer.packUnit().symbol()));
        }
        return count || hasDensity(offer);
    }

    private void checkPrices(Offer offer) {
        for (Offer.PriceBreak each : offer.breaks()) {
            if (each.price().isZero()) {
                findings.warning(each.price().origin(), OfferMessages.free());
            }
        }
    }

    /**
     * An expired offer is not used. An announced one is checked when orders are planned, because only then it is known
     * whether it is used.
     */
    private boolean hasDensity(Offer offer) {
        if (!offer.needsDensity()
                || book.material(offer.item()).map(Material::density).isPresent()) {
            return true;
        }
        if (items.isUsed(offer) && !prices.isOrderableOn(book.settings().costingDate(), offer)) {
            return true;
        }

        if (items.isUsed(offer)) {
            findings.error(offer.packSize().origin(), OfferMessages.noDensity(offer.item()));
        } else {
            findings.warning(offer.packSize().origin(), OfferMessages.noDensityUnused(offer.item()));
        }
        return false;
    }
}
