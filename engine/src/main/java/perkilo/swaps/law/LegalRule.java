package perkilo.swaps.law;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One rule of the law about a group of substances.
 *
 * @param group the substances that it is about
 * @param each whether each substance is limited alone; otherwise their sum is
 * @param purpose where the limit depends on what the substance is for; empty if it does not
 * @param kinds for which kinds of product
 * @param bound what it says
 * @param most as a fraction, as {@code expressed}; a pH for {@link Bound#PH}; null if there is no number
 * @param expressed what an amount is counted as, such as an acid; empty for the substance itself
 * @param from the first day for new products; null if it holds already
 * @param words what else it says, in full sentences; may be empty
 * @param entry where it is
 * @param amended by what act; may be empty
 * @param source how the value was looked up
 */
public record LegalRule(
        String group,
        boolean each,
        String purpose,
        KindCondition kinds,
        Bound bound,
        @Nullable BigDecimal most,
        String expressed,
        @Nullable LocalDate from,
        String words,
        String entry,
        String amended,
        String source) {

    /** What a rule says. */
    public enum Bound {
        /** Up to so much. */
        MAX,
        /** Less than so much. */
        BELOW,
        /** Nothing at all. */
        PROHIBITED,
        /** The product's pH below a value. */
        PH,
        /** Any amount. */
        FREE,
        /** A condition that no figure of a formula shows. */
        NOTE
    }

    static LegalRule parse(List<String> row) {
        Bound bound = Bound.valueOf(row.get(4).toUpperCase(Locale.ROOT));
        BigDecimal figure = row.get(5).isEmpty() ? null : new BigDecimal(row.get(5));
        return new LegalRule(
                row.get(0),
                row.get(1).equals("each"),
                row.get(2),
                KindCondition.parse(row.get(3)),
                bound,
                figure == null || bound == Bound.PH ? figure : figure.movePointLeft(2),
                row.get(6),
                row.get(7).isEmpty() ? null : LocalDate.parse(row.get(7)),
                row.get(9),
                row.get(10),
                row.get(11),
                row.get(12));
    }

    /** Where it is published, for a person: entry, and the act that brought the present value. */
    public String where() {
        return amended.isEmpty() ? entry : entry + ", by " + amended;
    }

    /** Whether the value is remembered and was not looked up again. */
    public boolean isFromMemory() {
        return source.startsWith("from memory");
    }

    boolean holdsOn(LocalDate day) {
        return from == null || !day.isBefore(from);
    }
}
