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
 * An offer of a market, with its supplier and its conversions.
 *
 * @param offer the offer as quoted
 * @param supplier who quotes it
 * @param vendor index of the supplier among the market's
 * @param density of the material in g/mL; null for a component, or if unknown
 * @param pieceWeight of one piece in grams; null for a material, or if unknown
 * @param perPackUnit kilograms, or pieces, in one of the offer's pack unit
 * @param toHome from the offer's currency to the home currency
 * @param toSupplier from the offer's currency to the supplier's
 */
public record Listing(
        Offer offer,
        Supplier supplier,
        int vendor,
        @Nullable Figure density,
        @Nullable Figure pieceWeight,
        BigDecimal perPackUnit,
        Conversion toHome,
        Conversion toSupplier) {

    /** As a power of ten. */
    private static final int GRAMS_PER_KG = 3;

    /** The content of one pack, in kilograms or pieces. */
    public BigDecimal packSize() {
        return offer.packSize().value().multiply(perPackUnit);
    }

    /** Whether it is sold by the piece. */
    public boolean isByPiece() {
        return offer.packUnit().isCount();
    }

    /** Whether its weight is known: pieces have a weight only if it is typed. */
    public boolean isWeighed() {
        return !isByPiece() || pieceWeight != null;
    }

    /** The weight of one pack for freight, in kilograms; zero if it is unknown. */
    public BigDecimal kgPerPack() {
        if (!isByPiece()) {
            return packSize();
        }
        return pieceWeight == null
                ? BigDecimal.ZERO
                : packSize().multiply(pieceWeight.value()).movePointLeft(GRAMS_PER_KG);
    }

    /**
     * The number of the price's units in one pack unit: 1 if the price is for the pack's own unit.
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
     * The price of one pack, in the offer's currency, unrounded.
     *
     * <p>Multiplies first and divides last, so that a price per pound for a pack of whole pounds is exact although the
     * pack is measured in kilograms.
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
     * The duty on a line, as a fraction: the offer's own, or the supplier's; zero if the supplier delivers duty paid.
     */
    public Figure duty() {
        if (supplier.terms() != null && !supplier.terms().buyerPaysDuty()) {
            return Figure.ZERO;
        }
        Figure own = offer.duty();
        return own == null ? supplier.duty() : own;
    }

    /**
     * The offer as a quote for the planner.
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
                kgPerPack(),
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
