package perkilo.reading;

import java.util.List;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.offers.OfferHistory;
import perkilo.reading.table.Findings;

/** Whether what is offered can be measured as what it is used for: materials by weight, components in pieces. */
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

    /** Reports what does not fit; the offers that can be measured. */
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
            findings.error(
                    offer.packSize().origin(),
                    "the pack of \"%s\" is in pieces, but it is a raw material; expected a unit such as kg or L"
                            .formatted(offer.item()));
        } else if (component && !count) {
            findings.error(
                    offer.packSize().origin(),
                    "the pack of \"%s\" is in %s, but it is a component; expected pieces (each)"
                            .formatted(offer.item(), offer.packUnit().symbol()));
        }
        return count || hasDensity(offer);
    }

    private void checkPrices(Offer offer) {
        for (Offer.PriceBreak each : offer.breaks()) {
            if (each.price().isZero()) {
                findings.warning(each.price().origin(), "Price is 0, so this is taken for free");
            }
        }
    }

    /**
     * What has expired takes no part, and whether an announced price does only orders can tell: those judge it
     * themselves.
     */
    private boolean hasDensity(Offer offer) {
        if (!offer.needsDensity()
                || book.material(offer.item()).map(Material::density).isPresent()) {
            return true;
        }
        if (items.isUsed(offer) && !prices.isOrderableOn(book.settings().costingDate(), offer)) {
            return true;
        }
        String what = "\"%s\" is sold by volume, but its density is not known; fill Density g/mL in Materials"
                .formatted(offer.item());
        if (items.isUsed(offer)) {
            findings.error(offer.packSize().origin(), what);
        } else {
            findings.warning(offer.packSize().origin(), what + ". The offer is left out, as no formula uses it");
        }
        return false;
    }
}
