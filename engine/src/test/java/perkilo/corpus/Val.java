package perkilo.corpus;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a person typed into a cell: words, a number with its format, or a day.
 *
 * @param text the words; for a number or a day how it looks in a text file
 * @param number the number; null for words
 * @param day the day; null for words
 * @param format of a number; empty for none
 */
record Val(
        String text, @Nullable BigDecimal number, @Nullable LocalDate day, String format) {

    static final Val BLANK = of("");

    static Val of(String text) {
        return new Val(text, null, null, "");
    }

    static Val number(BigDecimal number, String text, String format) {
        return new Val(text, number, null, format);
    }

    static Val day(LocalDate day, String text) {
        return new Val(text, null, day, "");
    }
}
