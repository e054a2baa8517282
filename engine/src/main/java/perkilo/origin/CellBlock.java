package perkilo.origin;

import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/**
 * Cells of a sheet: those in some rows and in some columns. It must not be changed.
 *
 * @param rows from zero; null for all
 * @param columns from zero; null for all
 */
public record CellBlock(@Nullable BitSet rows, @Nullable BitSet columns) {

    /** All cells of a sheet. */
    public static final CellBlock ALL = new CellBlock(null, null);

    /** Whether a cell is among them; both from zero. */
    public boolean holds(int row, int column) {
        return (rows == null || rows.get(row)) && (columns == null || columns.get(column));
    }
}
