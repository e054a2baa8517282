package perkilo.reading;

import java.math.BigDecimal;
import perkilo.origin.Decimals;

/** Fractions as percentages in words. */
final class Percents {

    private Percents() {}

    /** A fraction in per cent, without the sign: {@code 2.5} for 0.025. */
    static String words(BigDecimal fraction) {
        return Decimals.plain(fraction.movePointRight(2));
    }
}
