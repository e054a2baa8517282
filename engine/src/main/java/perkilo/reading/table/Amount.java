package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.units.Measure;

/**
 * A number, with what the cell, its header and its number format say of its unit.
 *
 * @param figure the number
 * @param beside the unit beside it in the cell
 * @param header the unit in the header
 * @param format the currency that the number format shows; null for none
 */
public record Amount(
        Figure figure,
        UnitText beside,
        UnitText header,
        @Nullable CurrencySign format) {

    /** The currency, from the cell, else the header, else the number format. */
    public Optional<CurrencySign> currency() {
        if (beside.currency() != null) {
            return Optional.of(beside.currency());
        }
        return header.currency() != null ? Optional.of(header.currency()) : Optional.ofNullable(format);
    }

    /** The unit, from the cell, else the header. */
    public Optional<Measure> measure() {
        return beside.measure() != null ? Optional.of(beside.measure()) : Optional.ofNullable(header.measure());
    }

    /** Whether the unit is a gallon of which neither the cell nor the header says whose. */
    public boolean isBareGallon() {
        return beside.measure() != null ? beside.bareGallon() : header.bareGallon();
    }

    /** How many of the unit: 100 where the cell or the header says {@code €/100 g}. */
    public BigDecimal count() {
        return beside.measure() != null ? beside.count() : header.count();
    }

    /** What the amount is for, in words: {@code 100 g}, {@code pack}; empty if it is not known. */
    public String per() {
        String one = perPack() ? "pack" : "";
        return measure().map(said -> words(count(), said)).orElse(one);
    }

    /** So many of a unit, in words; the number of one is left out. */
    public static String words(BigDecimal count, Measure measure) {
        return (count.compareTo(BigDecimal.ONE) == 0 ? "" : count.toPlainString() + " ") + measure.symbol();
    }

    /** Whether the cell or the header says "per pack". */
    public boolean perPack() {
        return beside.pack() || (beside.measure() == null && header.pack());
    }
}
