package perkilo.origin;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the cells of one input table held when they were read, so that a sheet of results can tell later what has
 * changed.
 *
 * @param sheet the sheet as its tab shows it
 * @param kind the kind of table, such as {@code Offers}
 * @param frame the place of the table
 * @param parts its columns; for a table of settings each setting
 */
public record SeenTable(String sheet, String kind, Frame frame, List<Part> parts) {

    public SeenTable {
        requireNonNull(sheet, "sheet");
        parts = List.copyOf(parts);
    }

    /**
     * The place of a table, all from zero, with what is around it.
     *
     * @param headerRow the row of its headers; below zero if it has none
     * @param lastRow its last row
     * @param firstColumn its first column
     * @param lastColumn its last column
     * @param headings how many cells of the row of headers are filled, up to {@code headingsTo}
     * @param headingsTo the last column in which headings are counted
     * @param below how many cells are filled below it, up to {@code belowTo}
     * @param belowTo the last row in which cells below it are counted
     */
    public record Frame(
            int headerRow,
            int lastRow,
            int firstColumn,
            int lastColumn,
            int headings,
            int headingsTo,
            int below,
            int belowTo) {}

    /**
     * The cells of a column, from one row to another.
     *
     * @param name the column or the setting, as templates spell it
     * @param column from zero
     * @param firstRow from zero
     * @param rows how many rows
     * @param cells what they hold, from the first row: a {@link BigDecimal}, a {@link java.time.LocalDate}, a text as
     *     it was typed, or an empty text; null for a long table, of which only the sums are known
     * @param sums of a long table
     * @param range what the cells may hold
     */
    public record Part(
            String name,
            int column,
            int firstRow,
            int rows,
            @Nullable List<Object> cells,
            @Nullable Sums sums,
            Range range) {

        /** The last row, from zero. */
        public int lastRow() {
            return firstRow + rows - 1;
        }
    }

    /**
     * What the cells of a column may hold.
     *
     * @param dates whether they are days
     * @param outside conditions that no number in them meets, as a spreadsheet writes them: {@code <0}
     * @param whole whether numbers have no decimals
     */
    public record Range(boolean dates, List<String> outside, boolean whole) {

        public Range {
            outside = List.copyOf(outside);
        }
    }

    /**
     * Sums over the cells of a long column.
     *
     * @param filled how many are not blank
     * @param numbers how many are numbers or days
     * @param sum of the numbers that are not days
     * @param lengths of the texts, each times its place in the column, from one
     */
    public record Sums(long filled, long numbers, BigDecimal sum, BigDecimal lengths) {}
}
