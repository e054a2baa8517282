package perkilo.xlsx.grid;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Makes the cells of a text file; numbers and texts stay as typed. */
final class TextCells implements PackedRow.Maker {

    private final List<Cell> made = new ArrayList<>();

    /** Adds a cell to a row, unless it is blank. */
    void pack(PackedRow row, int column, Cell cell) {
        switch (cell.kind()) {
            case BLANK -> {}
            case TEXT -> row.text(column, cell.text());
            default -> row.known(column, PackedRow.MADE, keep(cell));
        }
    }

    @Override
    public Cell number(String digits, int style) {
        return Cell.number(new BigDecimal(digits));
    }

    @Override
    public Cell text(String text) {
        return Cell.text(text);
    }

    @Override
    public Cell shared(int number) {
        throw new IllegalStateException("a text file shares no texts");
    }

    @Override
    public Cell made(int number) {
        return made.get(number);
    }

    @Override
    public int keep(Cell cell) {
        made.add(cell);
        return made.size() - 1;
    }
}
