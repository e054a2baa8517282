package perkilo.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import javax.money.CurrencyUnit;

/**
 * A way to convert one currency to another: directly, by the inverse of a rate, or through a common currency.
 *
 * @param from the currency that is converted
 * @param to the currency of the result
 * @param legs the rates used, in order; none if the currencies are the same
 */
public record Conversion(CurrencyUnit from, CurrencyUnit to, List<Leg> legs) {

    public Conversion {
        legs = List.copyOf(legs);
    }

    /**
     * Converts an amount, unrounded: multiplied by rates that are used directly, divided by rates that are inverted, to
     * 34 significant digits.
     *
     * <p>A rate is never inverted first: a rounded inverse loses cents on large amounts, and for the legacy currencies
     * of the euro it is forbidden (Council Regulation (EC) No 1103/97, Article 4(3)).
     */
    public BigDecimal convert(BigDecimal amount) {
        BigDecimal multiplied = amount;
        BigDecimal divisor = BigDecimal.ONE;
        for (Leg leg : legs) {
            if (leg.inverted()) {
                divisor = divisor.multiply(leg.rate().rate().value());
            } else {
                multiplied = multiplied.multiply(leg.rate().rate().value());
            }
        }
        return divisor.compareTo(BigDecimal.ONE) == 0 ? multiplied : multiplied.divide(divisor, MathContext.DECIMAL128);
    }

    /** Units of {@code to} for one unit of {@code from}, to 34 significant digits. */
    public BigDecimal factor() {
        return convert(BigDecimal.ONE);
    }

    /** The age of the oldest rate on {@code date}, in days. */
    public long ageInDays(LocalDate date) {
        return legs.stream()
                .mapToLong(leg -> ChronoUnit.DAYS.between(leg.rate().date(), date))
                .max()
                .orElse(0);
    }

    /**
     * One step of a conversion.
     *
     * @param rate the rate as in the table
     * @param inverted whether it is used in the opposite direction
     */
    public record Leg(DatedRate rate, boolean inverted) {

        /** This step as a conversion of its own. */
        public Conversion alone() {
            return inverted
                    ? new Conversion(rate.to(), rate.from(), List.of(this))
                    : new Conversion(rate.from(), rate.to(), List.of(this));
        }
    }
}
