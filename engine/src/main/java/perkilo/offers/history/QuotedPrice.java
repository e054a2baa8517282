package perkilo.offers.history;

import java.math.BigDecimal;
import java.math.MathContext;
import perkilo.offers.Offer;
import perkilo.units.Measure;

/**
 * The price that a quote asks at a quantity.
 *
 * @param offer the quote
 * @param at the price break that holds there
 */
public record QuotedPrice(Offer offer, Offer.PriceBreak at) {

    /** The price at a quantity in the offer's pack unit; below the first break that of the first break. */
    static QuotedPrice of(Offer offer, BigDecimal quantity) {
        Offer.PriceBreak holds = offer.breaks().get(0);
        for (Offer.PriceBreak each : offer.breaks()) {
            if (each.fromQuantity().compareTo(quantity) <= 0) {
                holds = each;
            }
        }
        return new QuotedPrice(offer, holds);
    }

    /** What the price is compared per: the unit of the pack, or that of the price where the two can't be converted. */
    public Measure unit() {
        Measure per = at.per();
        return per == null || per.kind() == offer.packUnit().kind() ? offer.packUnit() : per;
    }

    /** What the price as quoted is multiplied by to be the price of one {@link #unit()}; a pack's price is divided. */
    public BigDecimal factor() {
        Measure per = at.per();
        if (per == null || per.kind() != offer.packUnit().kind()) {
            return BigDecimal.ONE;
        }
        return offer.packUnit().inBase().divide(per.inBase(), MathContext.DECIMAL128);
    }

    /** The price of one {@link #unit()}, in the offer's currency. */
    public BigDecimal perUnit() {
        BigDecimal price = at.price().value();
        return at.per() == null
                ? price.divide(offer.packSize().value(), MathContext.DECIMAL128)
                : price.multiply(factor());
    }
}
