package perkilo.xlsx.splice;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;

/**
 * What a cell of a person's sheet is to hold.
 *
 * @param sheet as its tab shows it
 * @param row from zero
 * @param column from zero
 * @param number that it is to hold; null for words
 * @param words that it is to hold; empty for nothing, or with a number
 */
public record CellChange(
        String sheet, int row, int column, @Nullable BigDecimal number, String words) {

    /** The cell as a spreadsheet names it, with its sheet. */
    public String where() {
        return Origin.ofCell("", sheet, row, column).where();
    }
}
