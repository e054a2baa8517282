package perkilo.xlsx.grid;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The content of one cell.
 *
 * @param kind what it is
 * @param text the words; for an error cell what is wrong, in words that follow "is"; empty for numbers and dates, whose
 *     text is made on demand
 * @param number for a number
 * @param date for a date
 * @param format the number format as the spreadsheet spells it; empty if there is none
 * @param lines words with their line breaks, which {@code text} has as spaces; the same as {@code text} without any
 * @param typed words with all their spaces, as they were typed; empty for anything else
 */
public record Cell(
        Kind kind,
        String text,
        @Nullable BigDecimal number,
        @Nullable LocalDate date,
        String format,
        String lines,
        String typed) {

    private Cell(Kind kind, String text, @Nullable BigDecimal number, @Nullable LocalDate date, String format) {
        this(kind, text, number, date, format, text, "");
    }

    /** The most characters that a spreadsheet can keep in a cell. */
    private static final int LONGEST = 32_767;

    /** What a cell can be. */
    public enum Kind {
        BLANK,
        TEXT,
        NUMBER,
        DATE,
        ERROR
    }

    /** Nothing. */
    public static final Cell BLANK = new Cell(Kind.BLANK, "", null, null, "");

    /** The content as a person sees it; for an error cell what is wrong, in words that follow "is". */
    @Override
    public String text() {
        if (number != null) {
            return plain(number);
        }
        return date != null ? date.toString() : text;
    }

    /** Words; blank if there are only spaces. */
    public static Cell text(String text) {
        if (text.length() > LONGEST) {
            return error(CellFaults.tooLong(text.length()));
        }
        String stripped = Spaces.strip(text);
        return stripped.isEmpty() ? BLANK : new Cell(Kind.TEXT, stripped, null, null, "", lines(text, stripped), text);
    }

    /** A number without a format. */
    public static Cell number(BigDecimal number) {
        return number(number, "");
    }

    /** A number with the format that it is shown in. */
    public static Cell number(BigDecimal number, String format) {
        return new Cell(Kind.NUMBER, "", number, null, format);
    }

    /** A day. */
    public static Cell date(LocalDate date) {
        return new Cell(Kind.DATE, "", null, date, "");
    }

    /**
     * A cell whose content cannot be used.
     *
     * @param what in words that follow "is", such as {@code #DIV/0!, an error value}
     */
    public static Cell error(String what) {
        return new Cell(Kind.ERROR, what, null, null, "");
    }

    /** Whether it is empty. */
    public boolean isBlank() {
        return kind == Kind.BLANK;
    }

    /** Whether the number is shown as a percentage, so that 0.025 means 2.5 %. */
    public boolean isPercentFormat() {
        return kind == Kind.NUMBER
                && format.indexOf('%') >= 0
                && format.replaceAll("\"[^\"]*\"|\\[[^\\]]*]|\\\\.", "").contains("%");
    }

    private static String lines(String text, String stripped) {
        return text.indexOf('\n') < 0 && text.indexOf('\r') < 0
                ? stripped
                : text.lines()
                        .map(Spaces::strip)
                        .filter(line -> !line.isEmpty())
                        .collect(Collectors.joining("\n"));
    }

    private static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
