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
 * One supplier's price for one item in one pack size, with its price breaks. A row of a list is an offer with one
 * price; {@link JoinedOffer} joins the rows of one offer.
 *
 * @param supplier the supplier's name
 * @param item the material's or component's name
 * @param packSize above zero, in {@code packUnit}
 * @param packUnit unit of the pack size
 * @param breaks rising by quantity, at least one
 * @param currency of the prices
 * @param terms other terms of a line
 * @param validity the days that it is quoted for
 * @param origin the first row of the offer
 */
public record Offer(
        String supplier,
        String item,
        Figure packSize,
        Measure packUnit,
        List<PriceBreak> breaks,
        CurrencyUnit currency,
        LineTerms terms,
        Validity validity,
        Origin origin) {

    public Offer {
        breaks = List.copyOf(breaks);
        if (breaks.isEmpty()) {
            throw new IllegalArgumentException("an offer needs at least one price");
        }
    }

    /** The smallest line, in {@code packUnit}; null for one pack. */
    public @Nullable Figure minimumOrder() {
        return terms.minimumOrder();
    }

    /** Packs are sold in multiples of this; a whole number, at least one. */
    public Figure orderMultiple() {
        Figure multiple = terms.orderMultiple();
        return multiple == null ? Figure.ONE : multiple;
    }

    /** The duty on a line as a fraction; null if the supplier's applies. */
    public @Nullable Figure duty() {
        return terms.duty();
    }

    /** The day it was quoted on, or is announced for; null if unknown. */
    public @Nullable LocalDate quotedOn() {
        return validity.quotedOn();
    }

    /** The last day on which it is valid; null if unknown. */
    public @Nullable LocalDate validUntil() {
        return validity.validUntil();
    }

    /** Whether it is quoted for a day after this one. */
    public boolean isAnnouncedOn(LocalDate day) {
        return validity.beginsAfter(day);
    }

    /** Whether its last day is before this day. */
    public boolean isExpiredOn(LocalDate day) {
        return validity.endsBefore(day);
    }

    /** Whether converting it to kilograms needs the item's density. */
    public boolean needsDensity() {
        return packUnit.kind() == Measure.Kind.VOLUME
                || breaks.stream()
                        .map(PriceBreak::per)
                        .anyMatch(per -> per != null && per.kind() == Measure.Kind.VOLUME);
    }

    /** The same offer with another last day. */
    public Offer until(LocalDate last) {
        return new Offer(
                supplier, item, packSize, packUnit, breaks, currency, terms, new Validity(quotedOn(), last), origin);
    }

    /** The pack in words: {@code 25 kg}. */
    public String pack() {
        BigDecimal size = packSize.value().stripTrailingZeros();
        return (size.scale() < 0 ? size.setScale(0) : size).toPlainString() + " " + packUnit.symbol();
    }

    /**
     * A price from a quantity upwards, for the whole line.
     *
     * @param from in the pack unit; null for the first pack
     * @param price in the offer's currency, zero or more
     * @param per the unit that the price is for; null for one pack
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
