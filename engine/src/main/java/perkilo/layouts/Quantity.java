package perkilo.layouts;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import perkilo.units.Measure;

/**
 * An amount and its unit: 25 kg, 1,000 pieces.
 *
 * @param amount above zero
 * @param measure the unit
 * @param bareGallon whether the unit is a gallon of which the words do not say whose; {@code measure} is then the US
 *     one
 */
public record Quantity(BigDecimal amount, Measure measure, boolean bareGallon) {

    /** A quantity whose unit is clear. */
    public Quantity(BigDecimal amount, Measure measure) {
        this(amount, measure, false);
    }

    private static final BigDecimal TONNE = new BigDecimal("1000");
    private static final int PLACES = 12;

    /** The unit that a word means, in one of three languages; a tonne is a thousand kilograms. */
    public static Optional<Quantity> unit(String word) {
        Optional<Measure> measure = Measure.parse(word);
        if (measure.isPresent()) {
            return measure.map(found ->
                    new Quantity(BigDecimal.ONE, found, found == Measure.US_GAL && Measure.isBareGallon(word)));
        }
        if (ListWords.is("unit each", word)) {
            return Optional.of(new Quantity(BigDecimal.ONE, Measure.EACH));
        }
        return ListWords.is("unit tonne", word) ? Optional.of(new Quantity(TONNE, Measure.KG)) : Optional.empty();
    }

    /** This quantity, multiplied. */
    public Quantity times(BigDecimal factor) {
        return new Quantity(amount.multiply(factor), measure, bareGallon);
    }

    /** The amount in another unit of the same kind, rounded up to 12 decimals; empty between weight and volume. */
    public Optional<BigDecimal> in(Measure other) {
        if (other == measure) {
            return Optional.of(amount);
        }
        if (other.kind() != measure.kind()) {
            return Optional.empty();
        }
        return Optional.of(amount.multiply(measure.inBase()).divide(other.inBase(), PLACES, RoundingMode.UP));
    }

    @Override
    public String toString() {
        return plain(amount) + " " + measure.symbol();
    }

    /** A number without an exponent or trailing zeros. */
    public static String plain(BigDecimal number) {
        if (number.scale() == 0) {
            return number.toString();
        }
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
