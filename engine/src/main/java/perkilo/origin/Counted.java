package perkilo.origin;

import java.math.BigDecimal;

/** Counts of things in words, with the right plural. */
public final class Counted {

    private Counted() {}

    /** Such as {@code 1 price} or {@code 1,200 prices}: the word takes an s for any number but one. */
    public static String of(long number, String word) {
        return of(number, word, word + "s");
    }

    /** Such as {@code 1 entry} or {@code 2 entries}. */
    public static String of(long number, String one, String many) {
        return Decimals.readable(BigDecimal.valueOf(number), 0) + " " + (number == 1 ? one : many);
    }
}
