package perkilo.layouts;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import perkilo.reading.table.NumberText;

/** The decimal mark of a list; UNKNOWN until a price or an answer settles it. */
public enum DecimalMark {
    POINT,
    COMMA,
    UNKNOWN;

    /** The mark that a word of a mapping file means. */
    public static Optional<DecimalMark> of(String word) {
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "point", "." -> Optional.of(POINT);
            case "comma", "," -> Optional.of(COMMA);
            default -> Optional.empty();
        };
    }

    /** The number that a text of digits and marks means; empty if it is not a number, or can be two. */
    public Optional<BigDecimal> number(String digits) {
        NumberText read = NumberText.parse(digits);
        if (read instanceof NumberText.Parsed parsed && parsed.words().isEmpty()) {
            return Optional.of(parsed.value());
        }
        if (read instanceof NumberText.Ambiguous two && this != UNKNOWN) {
            boolean commaThere = digits.indexOf(',') >= 0;
            boolean decimals = commaThere == (this == COMMA);
            return Optional.of(decimals ? two.small() : two.large());
        }
        return Optional.empty();
    }

    /** Whether a text of digits and marks can be two numbers as long as the mark is not known. */
    public static boolean isAmbiguous(String digits) {
        return NumberText.parse(digits) instanceof NumberText.Ambiguous;
    }

    /** The decimal mark that a text of digits and marks must have: {@code 12,50} has a comma, {@code 1.250,00} too. */
    public static DecimalMark shownBy(String digits) {
        if (!(NumberText.parse(digits) instanceof NumberText.Parsed)) {
            return UNKNOWN;
        }
        int point = digits.lastIndexOf('.');
        int comma = digits.lastIndexOf(',');
        if (point < 0 && comma < 0) {
            return UNKNOWN;
        }
        char last = point > comma ? '.' : ',';
        boolean twice = digits.indexOf(last) != Math.max(point, comma);
        boolean isPoint = (last == '.') != twice;
        return isPoint ? POINT : COMMA;
    }
}
