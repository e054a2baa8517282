package perkilo.offers.history;

import java.math.BigDecimal;
import java.math.MathContext;
import perkilo.offers.Offer;
import perkilo.units.Measure;

/**
 * The price that a quote asks at a quantity.
 *
 * @param offer the quote
 * @param at the price break of that quantity
 */
public record QuotedPrice(Offer offer, Offer.PriceBreak at) {

    /** The price at a quantity in the offer's pack unit; below the first break, the price of the first break. */
    public static QuotedPrice of(Offer offer, BigDecimal quantity) {
        Offer.PriceBreak holds = offer.breaks().get(0);
        for (Offer.PriceBreak each : offer.breaks()) {
            if (each.fromQuantity().compareTo(quantity) <= 0) {
                holds = each;
            }
        }
        return new QuotedPrice(offer, holds);
    }

    /**
     * The unit in which the price is compared: that of the pack, or that of the price if the two cannot be converted.
     */
    public Measure unit() {
        Measure per = at.per();
        return per == null || per.kind() == offer.packUnit().kind() ? offer.packUnit() : per;
    }

    /** The factor from the quoted price to the price of one {@link #unit()}; a price per pack is divided instead. */
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
