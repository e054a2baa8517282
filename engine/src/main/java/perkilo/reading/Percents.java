package perkilo.reading;

import java.math.BigDecimal;
import perkilo.origin.Decimals;

/** Fractions as people say them. */
final class Percents {

    private Percents() {}

    /** The per cents of a fraction, without the sign: {@code 2.5} for 0.025. */
    static String words(BigDecimal fraction) {
        return Decimals.plain(fraction.movePointRight(2));
    }
}
