package perkilo.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32;

/**
 * A sum over what the cells of a sheet hold, to see later whether a person has changed anything. Looks, widths and the
 * last digits of numbers do not count, as office suites change them when they save.
 */
public final class ContentSum {

    private static final MathContext DIGITS = new MathContext(12);

    private final SortedMap<Integer, SortedMap<Integer, String>> cells = new TreeMap<>();

    /** Adds words; blank ones do not count. */
    public ContentSum text(int row, int column, String words) {
        String stripped = words.strip();
        if (!stripped.isEmpty()) {
            cells.computeIfAbsent(row, any -> new TreeMap<>()).put(column, "t" + stripped);
        }
        return this;
    }

    /** Adds a number. */
    public ContentSum number(int row, int column, BigDecimal number) {
        BigDecimal rounded = number.round(DIGITS);
        String plain =
                rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        cells.computeIfAbsent(row, any -> new TreeMap<>()).put(column, "n" + plain);
        return this;
    }

    /** The sum over a result sheet. */
    public static String of(ResultSheet sheet) {
        ContentSum sum = new ContentSum();
        sheet.cells()
                .forEach((row, inRow) -> inRow.forEach((column, cell) -> {
                    if (cell.content() instanceof ResultSheet.Text text) {
                        sum.text(row, column, text.text());
                    } else if (cell.content() instanceof ResultSheet.Value value) {
                        sum.number(row, column, value.expr().value());
                    }
                }));
        return sum.sum();
    }

    /** The sum over everything that was added, as a short word. */
    public String sum() {
        return of(cells.toString());
    }

    /** The sum of a text, as a short word. */
    public static String of(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }
}
