package perkilo.reading.arrange;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import perkilo.schema.SheetSchema;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * A part of a person's sheet that was arranged as one of our tables.
 *
 * @param from the person's sheet
 * @param schema what it is read as
 * @param arranged the table
 * @param headerRow the row of its headers on the person's sheet, from zero; the row above its first one if it has none,
 *     which may be -1
 * @param rows the rows of the sheet that the table was made of, from zero, its headers included
 * @param columns the columns of the sheet that the table covers, from zero
 * @param uses what each of these columns is read as; a column that is not read is missing
 */
public record ArrangedPart(
        Grid from,
        SheetSchema schema,
        Grid arranged,
        int headerRow,
        BitSet rows,
        BitSet columns,
        Map<Integer, String> uses) {

    public ArrangedPart {
        uses = Map.copyOf(uses);
    }

    /** Whether a cell of the person's sheet is part of it. */
    public boolean uses(int row, int column) {
        return rows.get(row) && columns.get(column);
    }

    /** What is left of a sheet without some parts; it has no title, so it is recognised by its headers alone. */
    static Grid rest(Grid sheet, List<ArrangedPart> parts) {
        Map<Integer, Map<Integer, Cell>> blank = new HashMap<>();
        for (ArrangedPart part : parts) {
            for (int row = part.rows.nextSetBit(0); row >= 0; row = part.rows.nextSetBit(row + 1)) {
                for (int column : sheet.row(row).keySet()) {
                    if (part.columns.get(column)) {
                        blank.computeIfAbsent(row, any -> new HashMap<>()).put(column, Cell.BLANK);
                    }
                }
            }
        }
        return sheet.with(blank).titled("");
    }
}
