package perkilo.workbook.read;

import java.math.BigDecimal;

/** Fractions as people say them. */
final class Percents {

    private Percents() {}

    /** The per cents of a fraction, without the sign: {@code 2.5} for 0.025. */
    static String words(BigDecimal fraction) {
        BigDecimal percent = fraction.movePointRight(2).stripTrailingZeros();
        return (percent.scale() < 0 ? percent.setScale(0) : percent).toPlainString();
    }
}
