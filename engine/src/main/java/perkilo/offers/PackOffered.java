package perkilo.offers;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.units.Measure;

/**
 * An item of a supplier in one pack size: what quotes of different days have in common.
 *
 * @param supplier by {@link Names#key}
 * @param item by {@link Names#key}
 * @param size in kilograms, litres or pieces, without trailing zeros, so that 10 kg and 10,000 g are the same pack
 * @param kind mass, volume or count
 */
public record PackOffered(String supplier, String item, BigDecimal size, Measure.Kind kind) {

    /** The pack of an offer. */
    public static PackOffered of(Offer offer) {
        return of(offer.supplier(), offer.item(), offer.packSize().value(), offer.packUnit());
    }

    /** The pack with these names and size, as typed. */
    public static PackOffered of(String supplier, String item, BigDecimal size, Measure unit) {
        return new PackOffered(
                Names.key(supplier),
                Names.key(item),
                size.multiply(unit.inBase()).stripTrailingZeros(),
                unit.kind());
    }

    /** Explicit: a generated equals and hashCode cost milliseconds at start-up (see engine/docs/measurements.md). */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PackOffered pack
                && supplier.equals(pack.supplier)
                && item.equals(pack.item)
                && size.equals(pack.size)
                && kind == pack.kind;
    }

    @Override
    public int hashCode() {
        return Objects.hash(supplier, item, size, kind);
    }
}
