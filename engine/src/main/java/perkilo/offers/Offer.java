package perkilo.offers;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * One supplier's price for one item in one pack size, with its price breaks.
 *
 * @param supplier the supplier's name
 * @param item the material's or component's name
 * @param packSize above zero, in {@code packUnit}
 * @param packUnit what the pack is measured in
 * @param breaks rising by quantity, at least one
 * @param currency what the prices are in
 * @param minimumOrder the smallest line, in {@code packUnit}; null for one pack
 * @param orderMultiple packs are sold in multiples of this; a whole number, at least one
 * @param duty as a fraction; null where the supplier's holds
 * @param quotedOn null where not known
 * @param validUntil the last day it holds; null where not known
 * @param origin the first row of the offer
 */
public record Offer(
        String supplier,
        String item,
        Figure packSize,
        Measure packUnit,
        List<PriceBreak> breaks,
        CurrencyUnit currency,
        @Nullable Figure minimumOrder,
        Figure orderMultiple,
        @Nullable Figure duty,
        @Nullable LocalDate quotedOn,
        @Nullable LocalDate validUntil,
        Origin origin) {

    public Offer {
        breaks = List.copyOf(breaks);
        if (breaks.isEmpty()) {
            throw new IllegalArgumentException("an offer needs at least one price");
        }
    }

    /** Whether it holds on a day: quoted on or before it, and not expired. */
    public boolean isValidOn(LocalDate day) {
        return !isAnnouncedOn(day) && !isExpiredOn(day);
    }

    /** Whether it is quoted for later than a day. */
    public boolean isAnnouncedOn(LocalDate day) {
        return quotedOn != null && quotedOn.isAfter(day);
    }

    /** Whether its last day lies before a day. */
    public boolean isExpiredOn(LocalDate day) {
        return validUntil != null && validUntil.isBefore(day);
    }

    /** Whether it holds on some day after the first of two, up to the second. */
    public boolean isAnnouncedBetween(LocalDate first, LocalDate last) {
        return quotedOn != null && isAnnouncedOn(first) && !isAnnouncedOn(last) && !isExpiredOn(quotedOn);
    }

    /** Whether it can be measured in kilograms only if its item's density is known. */
    public boolean needsDensity() {
        return packUnit.kind() == Measure.Kind.VOLUME
                || breaks.stream()
                        .map(PriceBreak::per)
                        .anyMatch(per -> per != null && per.kind() == Measure.Kind.VOLUME);
    }

    /** The same offer, whose price ends with another day. */
    public Offer until(LocalDate last) {
        return new Offer(
                supplier,
                item,
                packSize,
                packUnit,
                breaks,
                currency,
                minimumOrder,
                orderMultiple,
                duty,
                quotedOn,
                last,
                origin);
    }

    /** The pack as a person says it: {@code 25 kg}. */
    public String pack() {
        BigDecimal size = packSize.value().stripTrailingZeros();
        return (size.scale() < 0 ? size.setScale(0) : size).toPlainString() + " " + packUnit.symbol();
    }

    /**
     * A price from a quantity upwards, for the whole line.
     *
     * @param from in the pack unit; null for the first pack
     * @param price in the offer's currency, zero or more
     * @param per what the price is for; null for one pack
     * @param origin the row
     */
    public record PriceBreak(
            @Nullable Figure from, Figure price, @Nullable Measure per, Origin origin) {

        /** The quantity that the price starts at, in the pack unit. */
        public BigDecimal fromQuantity() {
            return from == null ? BigDecimal.ZERO : from.value();
        }
    }
}
