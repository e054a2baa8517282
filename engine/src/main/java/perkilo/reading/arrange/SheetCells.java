package perkilo.reading.arrange;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ListWords;
import perkilo.origin.Origin;
import perkilo.reading.table.NumberText;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Cells of a person's sheet, with those that were merged. */
final class SheetCells {

    private SheetCells() {}

    /** The cell at a place, or the one that was merged over it. */
    static Cell merged(Grid grid, int row, int column) {
        Cell cell = grid.at(row, column);
        if (!cell.isBlank()) {
            return cell;
        }
        return grid.mergedAt(row, column)
                .map(block -> grid.at(block.firstRow(), block.firstColumn()))
                .orElse(cell);
    }

    /** The place of the cell at a place, or of the one that was merged over it. */
    static Origin origin(Grid grid, int row, int column) {
        if (!grid.at(row, column).isBlank()) {
            return grid.origin(row, column);
        }
        return grid.mergedAt(row, column)
                .map(block -> grid.origin(block.firstRow(), block.firstColumn()))
                .orElseGet(() -> grid.origin(row, column));
    }

    static boolean isText(Cell cell) {
        return cell.kind() == Cell.Kind.TEXT;
    }

    /** The number that a cell holds, as a number or in clear words; null if there is none. */
    static @Nullable BigDecimal number(Cell cell) {
        if (cell.kind() == Cell.Kind.NUMBER) {
            return cell.number();
        }
        return isText(cell)
                        && !Character.isLetter(cell.text().codePointAt(0))
                        && NumberText.parse(cell.text()) instanceof NumberText.Parsed parsed
                ? parsed.value()
                : null;
    }

    static boolean isDash(Cell cell) {
        return isText(cell) && (cell.text().length() == 1 && "-–—".contains(cell.text()));
    }

    /** Whether a text heads a row of totals. */
    static boolean isTotal(Cell cell) {
        return isText(cell)
                && (ListWords.is("total", cell.text())
                        || ListWords.is(
                                "total",
                                cell.text().replaceAll("[:%\\d.,]+", " ").strip())
                        || SheetWords.isTotal(cell.text())
                        || cell.text().startsWith("Σ"));
    }
}
