package perkilo.units;

import java.time.LocalDate;
import javax.money.CurrencyUnit;
import perkilo.origin.Figure;

/**
 * One line of a table of exchange rates.
 *
 * @param from the currency of which one unit is priced
 * @param to the currency of the price
 * @param rate units of {@code to} for one unit of {@code from}; above zero
 * @param date the day of the rate
 * @param source who published it, in the words of the table; empty if the table does not say
 */
public record DatedRate(CurrencyUnit from, CurrencyUnit to, Figure rate, LocalDate date, String source) {

    public DatedRate {
        if (rate.value().signum() <= 0) {
            throw new IllegalArgumentException("a rate must be above zero, but %s to %s was %s"
                    .formatted(from, to, rate.value().toPlainString()));
        }
    }
}
