package perkilo.costing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.units.Conversion;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/**
 * An offer that a market has, with its supplier, in base units.
 *
 * @param offer as it stands
 * @param supplier who makes it
 * @param vendor index of the supplier among the market's
 * @param density of the material in g/mL; null for a component, or where it is not known
 * @param perPackUnit kilograms, or pieces, in one of the offer's pack unit
 * @param toHome how the offer's currency becomes the home currency
 * @param toSupplier how the offer's currency becomes the supplier's
 */
public record Listing(
        Offer offer,
        Supplier supplier,
        int vendor,
        @Nullable Figure density,
        BigDecimal perPackUnit,
        Conversion toHome,
        Conversion toSupplier) {

    /** What one pack holds, in kilograms or pieces. */
    public BigDecimal packSize() {
        return offer.packSize().value().multiply(perPackUnit);
    }

    /** Whether it is sold by the piece. */
    public boolean isByPiece() {
        return offer.packUnit().isCount();
    }

    /**
     * How many of the price's unit one pack unit is: 1 where a price is for the pack's own unit.
     *
     * @param price a price for a unit, not for the pack
     */
    public BigDecimal pricedPerPackUnit(Offer.PriceBreak price) {
        Measure per = price.per();
        if (per == null || per == offer.packUnit()) {
            return BigDecimal.ONE;
        }
        BigDecimal one = basePer(per, density);
        return perPackUnit.divide(one, MathContext.DECIMAL128);
    }

    /**
     * What one pack costs at a price, in the offer's currency, unrounded.
     *
     * <p>It is multiplied first and divided last, so that a price per pound of a pack that holds whole pounds comes out
     * exact although the pack is measured in kilograms.
     */
    public BigDecimal pricePerPack(Offer.PriceBreak price) {
        Measure per = price.per();
        if (per == null) {
            return price.price().value();
        }
        BigDecimal forPackUnits =
                price.price().value().multiply(offer.packSize().value());
        return per == offer.packUnit()
                ? forPackUnits
                : forPackUnits.multiply(perPackUnit).divide(basePer(per, density), MathContext.DECIMAL128);
    }

    /**
     * The lowest goods price of a kilogram or piece at any of the offer's breaks, in home currency at the dated rate.
     */
    public BigDecimal lowestPrice() {
        return offer.breaks().stream()
                .map(this::pricePerPack)
                .min(BigDecimal::compareTo)
                .map(toHome::convert)
                .orElseThrow()
                .divide(packSize(), MathContext.DECIMAL128);
    }

    /**
     * The duty on a line, as a fraction: the offer's own, or the supplier's; none where the supplier delivers duty
     * paid.
     */
    public Figure duty() {
        if (supplier.terms() != null && !supplier.terms().buyerPaysDuty()) {
            return Figure.ZERO;
        }
        Figure own = offer.duty();
        return own == null ? supplier.duty() : own;
    }

    /**
     * The offer as the planner sees it.
     *
     * @param item index of the need it covers
     * @param firstPeriod the first period it can arrive in
     * @param lastPeriod the last period of the plan
     */
    public Quote quote(int item, int firstPeriod, int lastPeriod) {
        Figure minimum = offer.minimumOrder();
        return new Quote(
                item,
                vendor,
                packSize(),
                isByPiece() ? BigDecimal.ZERO : packSize(),
                offer.orderMultiple()
                        .value()
                        .setScale(0, RoundingMode.UNNECESSARY)
                        .intValueExact(),
                minimum == null ? BigDecimal.ZERO : minimum.value().multiply(perPackUnit),
                tiers(),
                duty().value(),
                toSupplier.factor(),
                Currencies.minorDigits(offer.currency()),
                firstPeriod,
                lastPeriod);
    }

    private List<Tier> tiers() {
        return offer.breaks().stream()
                .map(price -> new Tier(price.fromQuantity().multiply(perPackUnit), pricePerPack(price)))
                .toList();
    }

    /**
     * Kilograms, or pieces, in one of a unit.
     *
     * @throws IllegalArgumentException for a volume without a density
     */
    public static BigDecimal basePer(Measure unit, @Nullable Figure density) {
        if (unit.isCount()) {
            return unit.inBase();
        }
        return unit.inKg(density == null ? null : density.value())
                .orElseThrow(() -> new IllegalArgumentException("a volume needs a density"));
    }
}
