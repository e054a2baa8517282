package perkilo.offers;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.units.Measure;

/**
 * What is sold by whom in which pack: what quotes of different days have in common.
 *
 * @param supplier by {@link Names#key}
 * @param item by {@link Names#key}
 * @param size in kilograms, litres or pieces, without zeros at its end, so that 10 kg and 10,000 g are one pack
 * @param kind what of it is measured
 */
public record PackOffered(String supplier, String item, BigDecimal size, Measure.Kind kind) {

    /** The pack of an offer. */
    public static PackOffered of(Offer offer) {
        return of(offer.supplier(), offer.item(), offer.packSize().value(), offer.packUnit());
    }

    /** The pack that names and a size stand for, as they are typed. */
    public static PackOffered of(String supplier, String item, BigDecimal size, Measure unit) {
        return new PackOffered(
                Names.key(supplier),
                Names.key(item),
                size.multiply(unit.inBase()).stripTrailingZeros(),
                unit.kind());
    }

    /** Written out, as a record's own takes its milliseconds when it is first asked. */
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
