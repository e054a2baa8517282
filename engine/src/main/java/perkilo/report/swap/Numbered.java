package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * An entry of a list with its number, by which a person asks for it.
 *
 * @param <T> what is numbered
 * @param number its place in the list, from one
 * @param entry what has this number
 */
record Numbered<T>(int number, T entry) {

    /** All entries of a list, in their order. */
    static <T> List<Numbered<T>> all(List<T> entries) {
        List<Numbered<T>> all = new ArrayList<>();
        for (T entry : entries) {
            all.add(new Numbered<>(all.size() + 1, entry));
        }
        return all;
    }

    /** The number as a figure of a sheet. */
    BigDecimal figure() {
        return BigDecimal.valueOf(number);
    }
}
