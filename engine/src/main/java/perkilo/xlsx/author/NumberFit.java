package perkilo.xlsx.author;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.ResultSheet.Cell;

/**
 * Widens columns until every number in them can be read; office suites show a number that does not fit as {@code ###}.
 * A column that is wide enough stays as it is. A column that is too narrow gets room for its longest number and one
 * more digit. Words do not count: they run on over the next columns, or over several lines.
 */
final class NumberFit {

    private final ResultSheet sheet;
    private final Map<NumberFormat, NumberWidth> formats = new HashMap<>();
    private @Nullable SortedMap<Integer, Integer> widened;

    private NumberFit(ResultSheet sheet) {
        this.sheet = sheet;
    }

    /** The sheet with columns that are wide enough. */
    static ResultSheet of(ResultSheet sheet) {
        return new NumberFit(sheet).fitted();
    }

    private ResultSheet fitted() {
        for (SortedMap<Integer, Cell> row : sheet.cells().values()) {
            for (Map.Entry<Integer, Cell> entry : row.entrySet()) {
                Cell cell = entry.getValue();
                if (cell.content() instanceof ResultSheet.Value value) {
                    fit(entry.getKey(), cell, value.expr().value());
                }
            }
        }
        return widened == null ? sheet : sheet.withColumnWidths(widened);
    }

    private void fit(Integer column, Cell cell, BigDecimal value) {
        NumberWidth width = formats.get(cell.format());
        if (width == null) {
            width = NumberWidth.of(cell.format());
            formats.put(cell.format(), width);
        }
        boolean bold = LookStyles.isBold(cell.look());
        SortedMap<Integer, Integer> widths = widened == null ? sheet.columnWidths() : widened;
        int present = widths.getOrDefault(column, TextFit.USUAL_WIDTH);
        boolean negative = value.signum() < 0;
        if (width.characters(NumberWidth.digits(value) + 1, negative, bold) <= present) {
            return;
        }
        int digits = NumberWidth.digits(width.rounded(value));
        if (width.characters(digits, negative, bold) > present) {
            if (widened == null) {
                widened = new TreeMap<>(widths);
            }
            widened.put(column, width.characters(digits + 1, negative, bold));
        }
    }
}
